import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { everyFunction } from "../../src/functions/catalogue";
import { openBrowser } from "./openBrowser";

// The built pages with Microsoft's own office.js and custom-functions-runtime.js, under the built policies. No request leaves this computer: the
// browser's requests to either origin are answered from the built folder and from the package's files.
const ROOT = path.join(__dirname, "../..");
const BUILT = path.join(ROOT, "dist/addin");
const PACKAGE = path.join(ROOT, "node_modules/@microsoft/office-js/dist");
const ADDIN = "https://retort.example/";
const CLOSED = "https://school.example/lab/retort/";
const VENDOR = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const BUILD_MILLISECONDS = 240_000;
jest.setTimeout(BUILD_MILLISECONDS);

const local = mkdtempSync(path.join(tmpdir(), "retort-local-"));
let browser: Browser;
beforeAll(async () => {
  if (!existsSync(path.join(BUILT, "functions.js"))) throw new Error("The add-in is not built. Run npm run build first.");
  // Not minified, which takes most of a build's time and changes neither pages nor copied files.
  const webpack = ["node_modules/webpack/bin/webpack.js", "--mode", "development", "--config-name", "addin", "--output-path", local];
  const { status, stdout } = spawnSync(process.execPath, webpack, {
    cwd: ROOT,
    encoding: "utf8",
    env: { ...process.env, OFFICE_JS: "local", ADDIN_URL: CLOSED },
  });
  if (status !== 0) throw new Error(`the build with OFFICE_JS=local failed:\n${stdout}`);
  browser = await openBrowser();
}, BUILD_MILLISECONDS);
afterAll(async () => {
  await browser?.close();
  rmSync(local, { recursive: true });
});

// What each host puts into the address of a page it opens (office.js reads it: host, platform, version, language), and the vendor's files that
// it leads to. The web host is one that the library does not know, so that the library also shows its page on trust in a frame.
const WEB_HOST = "https://office.school.example/";
interface Guise {
  readonly host: string;
  readonly info: string;
  readonly fragment: string;
  readonly library: string;
  readonly further: readonly string[];
}
const GUISES: readonly Guise[] = [
  {
    host: "web",
    info: "Excel$Web$16.00$en-us$$$$0",
    fragment: `#&_xdm_Info=conversation|retort|${WEB_HOST}`,
    library: "excel-web-16.00",
    further: ["en-us/office_strings.js", "AgaveErrorUX/index.html"],
  },
  { host: "Windows", info: "Excel$Win32$16.01$de-de$$$$0", fragment: "", library: "excel-win32-16.01", further: ["de-de/office_strings.js"] },
  { host: "Mac", info: "Excel$Mac$16.00$fr-fr$$$$0", fragment: "", library: "excel-mac-16.00", further: ["fr-fr/office_strings.js"] },
];

// The library asks for its texts and its page on trust some 0.1 s after its main file.
const SETTLES_MS = 1000;

interface Opened {
  readonly complaints: readonly string[];
  /** The vendor's files, in the order they were asked for. */
  readonly vendorFiles: readonly string[];
  /** How many functions were registered with the vendor's runtime. */
  readonly registered: number;
}

/** Folders as they would be uploaded to an address, the first that has a file counting. */
interface Upload {
  readonly place: string;
  readonly at: string;
  readonly folders: readonly string[];
}

/** Opens a page of the add-in in a guise, until nothing more happens. */
async function opened({ at, folders }: Upload, pageName: string, { info, fragment }: Guise): Promise<Opened> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const complaints: string[] = [];
  const asked: string[] = [];
  const seen = { registered: 0 };
  await page.exposeBinding("complain", (_source, text: string) => void complaints.push(text));
  await page.exposeBinding("registered", (_source, count: number) => void (seen.registered = Math.max(seen.registered, count)));
  await page.addInitScript(watchPage);
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  const address = `${at}${pageName}?_host_Info=${info}${fragment}`;
  await context.route("**/*", (route) => {
    const url = route
      .request()
      .url()
      .replace(/[?#].*$/, "");
    asked.push(url);
    if (url === WEB_HOST) return route.fulfill({ contentType: "text/html", body: `<iframe src="${address.replaceAll("&", "&amp;")}"></iframe>` });
    const file = url.startsWith(VENDOR)
      ? fileIn([PACKAGE], url.slice(VENDOR.length))
      : fileIn(folders, url.startsWith(at) ? url.slice(at.length) : "");
    if (file !== undefined) return route.fulfill({ path: file });
    complaints.push(`not there: ${url}`);
    return route.fulfill({ status: 404, body: "" });
  });
  await page.goto(fragment === "" ? address : WEB_HOST);
  await page.waitForTimeout(SETTLES_MS);
  await context.close();
  const vendorFiles = asked.flatMap((url) => [VENDOR, `${at}office/`].flatMap((place) => (url.startsWith(place) ? [url.slice(place.length)] : [])));
  return { complaints, vendorFiles, ...seen };
}

/** In the page, before anything of its own. */
function watchPage(): void {
  const { complain, registered } = window as unknown as { complain: (text: string) => void; registered: (count: number) => void };
  document.addEventListener("securitypolicyviolation", (event) => complain(`policy ${event.violatedDirective}: ${event.blockedURI}`));
  const count = (): number =>
    typeof CustomFunctions === "undefined"
      ? 0
      : Object.keys((CustomFunctions as unknown as { _association?: { mappings: object } })._association?.mappings ?? {}).length;
  setInterval(() => registered(count()), 10);
}

/** The vendor's network and its package spell some names with capitals that the other has not. */
const fileIn = (folders: readonly string[], name: string): string | undefined =>
  folders
    .flatMap((folder) => [path.join(folder, name), ...(folder === PACKAGE ? [path.join(folder, name.toLowerCase())] : [])])
    .find((file) => existsSync(file) && statSync(file).isFile());

const UPLOADS: readonly Upload[] = [
  { place: "Microsoft's network", at: ADDIN, folders: [BUILT] },
  { place: "the add-in's own folder, below the top of its host", at: CLOSED, folders: [local, BUILT] },
];

describe.each(UPLOADS)("with the library from $place", (upload) => {
  test.each(GUISES)("the pane's page loads as $host with nothing missing, refused or wrong", async (guise) => {
    const { complaints, vendorFiles } = await opened(upload, "taskpane.html", guise);
    const { library, further } = guise;
    expect(complaints).toEqual([]);
    expect(vendorFiles.slice(0, 2 + further.length)).toEqual(["office.js", `${library}.js`, ...further]);
  });

  test.each(GUISES)("the functions page loads as $host and registers every function", async (guise) => {
    const { complaints, vendorFiles, registered } = await opened(upload, "functions.html", guise);
    const { library, further } = guise;
    expect(complaints).toEqual([]);
    expect(vendorFiles.slice(0, 2 + further.length)).toEqual(["custom-functions-runtime.js", `${library}-core.js`, ...further]);
    expect(registered).toBe(everyFunction.length);
  });
});

test("the add-in's own folder holds no link to Microsoft's network, and its policies no source but their own", () => {
  for (const page of ["taskpane.html", "functions.html"]) {
    const [built, own] = [BUILT, local].map((folder) => readFileSync(path.join(folder, page), "utf8"));
    expect(own).not.toContain("appsforoffice");
    for (const directive of ["script-src", "frame-src"]) {
      expect(built).toMatch(new RegExp(`${directive} 'self' https://appsforoffice\\.microsoft\\.com[;"]`));
      expect(own).toMatch(new RegExp(`${directive} 'self'[;"]`));
    }
  }
});

test("a build for an address below the top of its host names nothing but that address, and every file that it names is there", () => {
  const manifest = readFileSync(path.join(local, "manifest.xml"), "utf8");
  expect(manifest).not.toContain("<!--");
  const named = [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map(([, address = ""]) => address);
  const metadata = JSON.parse(readFileSync(path.join(local, "functions.json"), "utf8")) as { functions: { helpUrl: string }[] };
  const addresses = [...named, ...metadata.functions.map(({ helpUrl }) => helpUrl)];
  expect(named.length).toBeGreaterThan(10);
  expect(addresses.filter((address) => !address.startsWith(CLOSED))).toEqual([]);
  expect(addresses.filter((address) => fileIn([local, BUILT], address.slice(CLOSED.length)) === undefined)).toEqual([]);
  expect(readFileSync(path.join(local, "_headers"), "utf8")).toContain("\n/lab/retort/functions.json\n");
});
