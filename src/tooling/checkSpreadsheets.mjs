// npm run check:libreoffice: has LibreOffice calculate what Retort writes with built-in functions, and looks at what it keeps of a saved file.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const ENVIRONMENT = "RETORT_SOFFICE";
const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

const inFolder = (folder, names) => names.map((name) => path.join(folder, name));

/** The usual places; each is tried in turn. */
function usualPlaces() {
  if (process.platform === "darwin") return ["/Applications/LibreOffice.app/Contents/MacOS/soffice"];
  if (process.platform === "win32") {
    const folders = [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"]].filter((folder) => folder !== undefined);
    return folders.map((folder) => path.join(folder, "LibreOffice", "program", "soffice.exe"));
  }
  const folders = (process.env.PATH ?? "").split(path.delimiter).filter((folder) => folder !== "");
  return folders.flatMap((folder) => inFolder(folder, ["soffice", "libreoffice"]));
}

const named = process.env[ENVIRONMENT];
const executable = named ? [named].find(existsSync) : usualPlaces().find(existsSync);

if (executable === undefined) {
  const found = named ? `${ENVIRONMENT} names ${named}, which does not exist.` : "LibreOffice was not found.";
  console.error(`${found} Install LibreOffice Calc, or set ${ENVIRONMENT} to the path of its soffice executable.`);
  process.exit(1);
}

const jest = path.join(ROOT, "node_modules/jest/bin/jest.js");
const config = path.join(ROOT, "tests/libreoffice/jest.config.json");
const { status } = spawnSync(process.execPath, [jest, "--config", config, ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: "inherit",
  env: { ...process.env, [ENVIRONMENT]: executable },
});
process.exit(status ?? 1);
