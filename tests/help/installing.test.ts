import { readFileSync } from "node:fs";
import path from "node:path";
import { firstAid } from "../../src/help/installing/firstAid";
import { installingPage } from "../../src/help/installing/installingPage";
import { CHECK, readers } from "../../src/help/installing/readers";
import { apacheRules, headersFile, nginxRules } from "../../src/help/installing/serverRules";
import { numberOf } from "../functions/call";

const ROOT = path.join(__dirname, "../..");
const page = installingPage();
const stepsOf = (reader: string): string => readers.find(({ heading }) => heading === reader)?.steps.join("\n") ?? "";

test("each reader is through in fewer than ten steps", () => {
  expect(readers.map(({ heading, steps }) => [heading, steps.length])).toEqual([
    ["For yourself, in Excel on the web", 6],
    ["For yourself, in Excel on Windows", 7],
    ["For yourself, in Excel on a Mac", 6],
    ["For a school or a lab, as its administrator", 8],
    ["For whoever hosts it", 8],
  ]);
});

// Menu paths and places as Microsoft's documentation has them: sideloading on the web, from a network share and on Mac; the admin centre's
// integrated apps; clearing the Office cache.
test.each([
  ["For yourself, in Excel on the web", ["Home > Add-ins > More Settings", "Upload My Add-in"]],
  [
    "For yourself, in Excel on Windows",
    ["File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs", "Show in Menu", "Shared Folder"],
  ],
  ["For yourself, in Excel on a Mac", ["~/Library/Containers/com.microsoft.Excel/Data/Documents", "named wef"]],
  [
    "For a school or a lab, as its administrator",
    ["https://admin.microsoft.com", "Settings > Integrated apps > Upload custom apps", "https://appsforoffice.microsoft.com"],
  ],
  [
    "For whoever hosts it",
    [
      "ADDIN_URL=https://example.org/retort npm run build",
      "OFFICE_JS=local",
      "Access-Control-Allow-Origin",
      "X-Frame-Options",
      "dist/addin",
      "dist/workbench",
    ],
  ],
])("the steps %s name %j", (reader, named) => {
  for (const name of named) expect(stepsOf(reader)).toContain(name);
});

test("the number to check an installation by is what the function gives", () => {
  const [, formula = "", shows] = /"([^"]+)"\) in a cell\. It shows ([\d.]+)\.$/.exec(CHECK) ?? [];
  expect(numberOf("MOLARMASS", formula)).toBe(Number(shows));
  expect(readers.filter(({ steps }) => steps.includes(CHECK)).map(({ heading }) => heading)).toHaveLength(4);
});

test("the settings of the build and the script that the steps name are those there are", () => {
  const config = readFileSync(path.join(ROOT, "webpack.config.js"), "utf8");
  expect(config).toContain("process.env.ADDIN_URL");
  expect(config).toContain("process.env.OFFICE_JS");
  const { engines } = JSON.parse(readFileSync(path.join(ROOT, "package.json"), "utf8")) as { engines: { node: string } };
  expect(readers.at(-1)?.before).toContain(`Node ${engines.node.replace(">=", "")} or later`);
});

test("first aid has a remedy for each sign", () => {
  expect(firstAid.map(({ sign, remedy }) => [sign, remedy.length])).toEqual([
    ["#NAME? in cells that hold our functions", 4],
    ["#BUSY!", 3],
    ["The old version is still there", 4],
    ["Blocked by the school or employer", 2],
    ["The pane stays empty or says that it could not reach a library", 1],
  ]);
  const remedies = firstAid.flatMap(({ remedy }) => remedy).join("\n");
  for (const part of ["F2 and Enter", "up to 24 hours", "%LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef", "Data/Library/Caches", "#CALC!", "Share tab"])
    expect(remedies).toContain(part);
});

test("everything of it stands on the page, with the rules for three servers", () => {
  const texts = [
    ...readers.flatMap(({ heading, before, steps }) => [heading, before, ...steps]),
    ...firstAid.flatMap(({ sign, remedy }) => [sign, ...remedy]),
  ];
  const listings = [nginxRules("/retort/"), apacheRules(), headersFile("/retort/", ["functions.html", "taskpane.html", "manifest.xml"])];
  for (const text of [...texts, ...listings.map((listing) => listing.trimEnd())])
    expect(page).toContain(text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;"));
});

test("no two rules of _headers give one header for the same file", () => {
  const rules = headersFile("/retort", ["taskpane.html"])
    .split(/\n(?=\/)/)
    .slice(1);
  const caching = rules.filter((rule) => rule.includes("Cache-Control")).map((rule) => rule.split("\n")[0]);
  expect(caching).toEqual([
    "/retort/hashed/*",
    "/retort/assets/*",
    "/retort/taskpane.html",
    "/retort/functions.js",
    "/retort/functions.json",
    "/retort/help/*",
  ]);
  expect(rules[0]).toBe("/retort/*\n  Access-Control-Allow-Origin: *\n  X-Content-Type-Options: nosniff");
});

test("nginx gets a place for each way of caching, each with every header: an inner add_header ends those around it", () => {
  const places = nginxRules("/lab/")
    .trimEnd()
    .split(/\n(?=location)/);
  expect(places.map((place) => place.split("\n").filter((line) => line.includes("add_header")).length)).toEqual([3, 3, 3]);
  expect(places.map((place) => /^location (\S+) \{/.exec(place)?.[1])).toEqual(["/lab/", "/lab/hashed/", "/lab/assets/"]);
  expect(places.map((place) => /Cache-Control "([^"]+)"/.exec(place)?.[1])).toEqual([
    "no-cache",
    "public, max-age=31536000, immutable",
    "public, max-age=86400",
  ]);
});
