// Installs the development packages when they are missing or older than the lock file. Needs nothing but Node and npm.
import { spawnSync } from "node:child_process";
import { statSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");

const changedAt = (file) => statSync(path.join(ROOT, file), { throwIfNoEntry: false })?.mtimeMs;

// npm writes this file last, so an install that broke off leaves none or an old one.
const installed = changedAt("node_modules/.package-lock.json");
const locked = changedAt("package-lock.json");

if (installed === undefined || (locked !== undefined && installed < locked)) {
  console.log("Installing packages with npm ci ...");
  const { status } = spawnSync("npm", ["ci", "--no-audit", "--no-fund"], { cwd: ROOT, stdio: "inherit", shell: process.platform === "win32" });
  process.exitCode = status ?? 1;
}
