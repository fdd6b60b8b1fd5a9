import { spawnSync } from "node:child_process";
import path from "node:path";

interface Here {
  readonly platform: string;
  readonly home: string;
  readonly words: readonly string[];
  readonly npx: (args: readonly string[]) => number;
  readonly say: (text: string) => void;
  readonly refuse: (text: string) => void;
}
const { sideload } = jest.requireActual<{ sideload: (here: Here) => number }>("../../src/tooling/sideload.js");

const HOMES: Readonly<Record<string, string>> = { win32: "D:\\sam", darwin: "/Users/sam", linux: "" };

/** A run on a computer that is not there: the commands it would give, what it says and its exit status. */
function run(platform: string, words: readonly string[], failing = ""): { status: number; commands: string[]; said: string; refused: string } {
  const commands: string[] = [];
  const told = { said: "", refused: "" };
  const status = sideload({
    platform,
    home: HOMES[platform] ?? "",
    words,
    npx: (args) => {
      commands.push(args.join(" "));
      return failing !== "" && args.join(" ").includes(failing) ? 7 : 0;
    },
    say: (text) => void (told.said += text),
    refuse: (text) => void (told.refused += text),
  });
  return { status, commands, ...told };
}

const START = '--yes office-addin-debugging@7.0.0 start manifest.xml desktop --app excel --dev-server "npm run dev-server" --dev-server-port 3000';
const INSTALL = "--yes office-addin-dev-certs@3.0.0 install";
const UNINSTALL = "npx --yes office-addin-dev-certs@3.0.0 uninstall";

test("on Windows the certificates are asked for first, and on a Mac the sideloading tool asks for them", () => {
  expect(run("win32", []).commands).toEqual([INSTALL, START]);
  expect(run("darwin", []).commands).toEqual([START]);
});

test("without certificates nothing else is begun", () => {
  expect(run("win32", [], "dev-certs")).toMatchObject({ status: 7, commands: [INSTALL], said: "" });
});

test.each([
  ["win32", "D:\\sam\\.office-addin-dev-certs", "HKEY_CURRENT_USER\\SOFTWARE\\Microsoft\\Office\\16.0\\Wef\\Developer"],
  ["darwin", "/Users/sam/.office-addin-dev-certs", "/Users/sam/Library/Containers/com.microsoft.Excel/Data/Documents/wef"],
])("on %s it says what it changed and how to undo each part, also where the start failed half-way", (platform, certificates, registered) => {
  const { status, said } = run(platform, []);
  expect(status).toBe(0);
  for (const part of [certificates, registered, "https://localhost:3000", "30 days", UNINSTALL, "npm run excel -- stop"])
    expect(said).toContain(part);
  expect(run(platform, [], "start")).toMatchObject({ status: 7, said });
});

test.each(["win32", "darwin"])("stop takes the add-in out of Excel on %s, and says that the certificates stay", (platform) => {
  const { status, commands, said } = run(platform, ["stop"]);
  expect([status, commands]).toEqual([0, ["--yes office-addin-debugging@7.0.0 stop manifest.xml"]]);
  expect(said).toContain("Excel no longer knows Retort");
  expect(said).toContain(UNINSTALL);
  expect(run(platform, ["stop"], "stop")).toMatchObject({ status: 7, said: "" });
});

test.each([[["halt"]], [["stop", "now"]]])("other words, such as %j, are refused and nothing is done", (words) => {
  const { status, commands, refused } = run("win32", words);
  expect([status, commands]).toEqual([1, []]);
  expect(refused).toBe(`npm run excel: "${words.join(" ")}" is not known. Give nothing, or stop: npm run excel -- stop`);
});

test("without Excel nothing is done, and the local workbook is named instead", () => {
  expect(run("linux", [])).toMatchObject({ status: 1, commands: [], refused: expect.stringContaining("npm start") as string });
});

const onLinux = process.platform === "linux" ? test : test.skip;
onLinux("the script itself says so", () => {
  const script = path.join(__dirname, "../../src/tooling/excel.mjs");
  const { status, stdout, stderr } = spawnSync(process.execPath, [script], { encoding: "utf8" });
  expect([status, `${stdout}${stderr}`]).toEqual([1, expect.stringContaining("Excel is not available on this system")]);
});
