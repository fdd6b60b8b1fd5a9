// npm run check:spreadsheets: has LibreOffice and Gnumeric calculate what Retort writes with built-in functions, and looks at what LibreOffice
// keeps of a saved file. With --have it only says whether both programs are there.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

const windowsFolders = () => [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"]].filter((folder) => folder !== undefined);
const onPath = (names) => {
  const folders = (process.env.PATH ?? "").split(path.delimiter).filter((folder) => folder !== "");
  return folders.flatMap((folder) => names.map((name) => path.join(folder, name)));
};

/** The programs, the variable that may name each, its usual places, and how to get it. */
const PROGRAMS = [
  {
    called: "LibreOffice Calc",
    variable: "RETORT_SOFFICE",
    places: [
      ...(process.platform === "darwin" ? ["/Applications/LibreOffice.app/Contents/MacOS/soffice"] : []),
      ...(process.platform === "win32" ? windowsFolders().map((folder) => path.join(folder, "LibreOffice", "program", "soffice.exe")) : []),
      ...onPath(["soffice", "libreoffice"]),
    ],
    get: "Debian and Ubuntu: apt-get install --no-install-recommends libreoffice-calc; macOS: brew install --cask libreoffice; Windows: winget install TheDocumentFoundation.LibreOffice.",
  },
  {
    called: "Gnumeric (its ssconvert)",
    variable: "RETORT_SSCONVERT",
    places: onPath(["ssconvert"]),
    get: "Debian and Ubuntu: apt-get install --no-install-recommends gnumeric; macOS: brew install gnumeric; Windows has no current build: run this check in WSL.",
  },
];

const environment = { ...process.env };
const missing = [];
for (const { called, variable, places, get } of PROGRAMS) {
  const named = process.env[variable];
  const executable = (named ? [named] : places).find((place) => existsSync(place));
  if (executable === undefined)
    missing.push(
      `${named ? `${variable} names ${named}, which does not exist.` : `${called} was not found.`} ${get} Or set ${variable} to its path.`,
    );
  else environment[variable] = executable;
}
if (missing.length > 0) {
  console.error(missing.join("\n"));
  process.exit(1);
}

if (process.argv.includes("--have")) process.exit(0);

const jest = path.join(ROOT, "node_modules/jest/bin/jest.js");
const config = path.join(ROOT, "tests/spreadsheets/jest.config.json");
const { status } = spawnSync(process.execPath, [jest, "--config", config, ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: "inherit",
  env: environment,
});
process.exit(status ?? 1);
