// npm run excel: builds, serves and sideloads the add-in into Excel. Windows and macOS only.
import { spawnSync } from "node:child_process";
import cli from "office-addin-cli";

if (process.platform !== "win32" && process.platform !== "darwin") {
  cli.logErrorMessage("Excel is not available on this system; run `npm start` for the local workbook instead.");
  process.exit(1);
}

// Called by npx: as a dependency it brings a thousand packages and a native module that fails to install offline.
const DEBUGGING = "office-addin-debugging@7.0.0";
const { status } = spawnSync(
  "npx",
  ["--yes", DEBUGGING, "start", "manifest.xml", "desktop", "--app", "excel", "--dev-server", '"npm run dev-server"', "--dev-server-port", "3000"],
  {
    stdio: "inherit",
    shell: true,
  },
);
process.exit(status ?? 1);
