// Serves the built local workbook to this computer, prints its address and opens the desktop's browser.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import cli from "office-addin-cli";
import { staticServer } from "./staticServer.mjs";

const FIRST_PORT = 4173;
const HIGHEST_PORT = 65_535;
const BUILT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../dist/workbench");

const HELP = `npm start, or node src/tooling/serve.mjs once it is built: serves the local workbook to this computer alone.

  --port <number>  the first port to try, from 0 to ${HIGHEST_PORT}; the next free one is taken, and 0 takes any. ${FIRST_PORT} where left out.
                   npm start -- --port 5000
  --help           shows this

It prints the address and opens it where there is a desktop. Ctrl+C stops it; the open page can still save.`;

/** Opens the address where there is a desktop to open it on; says nothing when that fails, for the address is printed anyway. */
function openInDesktopBrowser(address) {
  const [command, ...rest] = openingCommand();
  if (command === undefined) return;
  spawn(command, [...rest, address], { stdio: "ignore", detached: true })
    .on("error", () => {})
    .unref();
}

function openingCommand() {
  if (process.platform === "darwin") return ["open"];
  if (process.platform === "win32") return ["cmd", "/c", "start", ""];
  const hasDesktop = Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
  return hasDesktop ? ["xdg-open"] : [];
}

/** Any number is read by the part that looks like one, so the digits are asked for first. */
function portOf(text) {
  const refusal = `--port: "${text}" is not a port. Give a whole number from 0 to ${HIGHEST_PORT}, such as ${FIRST_PORT}.`;
  const port = cli.parseNumber(/^\d+$/.test(text) ? text : "", refusal);
  if (port > HIGHEST_PORT) throw new Error(refusal);
  return port;
}

async function main() {
  const { values } = parseArgs({ options: { port: { type: "string" }, help: { type: "boolean" } } });
  if (values.help) return console.log(HELP);
  const port = values.port === undefined ? FIRST_PORT : portOf(values.port);
  if (!existsSync(path.join(BUILT, "index.html"))) throw new Error("The local workbook is not built yet. Run npm start, or npm run build first.");
  const { address } = await staticServer(BUILT, port);
  console.log(`The local workbook is at ${address}\nPress Ctrl+C to stop.`);
  openInDesktopBrowser(address);
}

main().catch((problem) => {
  console.error(problem.message);
  process.exitCode = 1;
});
