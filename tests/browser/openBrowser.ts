import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { chromium, type Browser } from "playwright-core";
import { whyNotStarted } from "./whyNotStarted";

const ENVIRONMENT = "RETORT_BROWSER";

// The usual places; each is tried in turn.
const ON_LINUX = ["google-chrome", "google-chrome-stable", "microsoft-edge", "microsoft-edge-stable", "chromium", "chromium-browser"].flatMap(
  (name) => [`/usr/bin/${name}`, `/usr/local/bin/${name}`, `/snap/bin/${name}`],
);
const ON_MAC = ["Google Chrome", "Microsoft Edge", "Chromium"].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
const ON_WINDOWS = [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
  .filter((folder) => folder !== undefined)
  .flatMap((folder) =>
    ["Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"].map((file) => path.join(folder, file)),
  );
const INSTALLED: Partial<Record<NodeJS.Platform, readonly string[]>> = { linux: ON_LINUX, darwin: ON_MAC, win32: ON_WINDOWS };

const FLAGS = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // In place of Playwright's own list, which turns off the partitioned storage of frames that people's browsers have; without it, newer
  // ones refuse storage to frames of another site altogether.
  "--disable-features=Translate,HttpsUpgrades,MediaRouter,OptimizationHints,DialMediaRouteProvider",
];

/**
 * A headless browser: the one named by RETORT_BROWSER, else an installed Chrome, Edge or Chromium, else the one that
 * comes with the development dependencies (Linux x64).
 * @throws Error that says how to get one, or what keeps it from starting; browser tests are never skipped
 */
export async function openBrowser(): Promise<Browser> {
  const isRoot = process.getuid?.() === 0;
  const executablePath = browserFile();
  try {
    return await chromium.launch({ executablePath, args: [...FLAGS, ...(isRoot ? ["--no-sandbox"] : [])] });
  } catch (problem) {
    throw new Error(whyNotStarted(executablePath, String(problem)), { cause: problem });
  }
}

function browserFile(): string {
  const named = process.env[ENVIRONMENT];
  if (named !== undefined && named !== "") {
    if (existsSync(named)) return named;
    throw new Error(`${ENVIRONMENT} names ${named}, which does not exist. Give the path of a Chrome, Edge or Chromium executable.`);
  }
  const file = INSTALLED[process.platform]?.find((candidate) => existsSync(candidate)) ?? bundledBrowser();
  if (file !== undefined) return file;
  throw new Error(
    `No browser was found. Install Chrome, Edge or Chromium, or set ${ENVIRONMENT} to the path of one. On Linux x64, npm ci brings one along.`,
  );
}

/** The package holds ES modules only, which jest cannot require, so Node is asked in a process of its own. */
function bundledBrowser(): string | undefined {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const script = 'import("@sparticuz/chromium").then(async ({ default: chromium }) => console.log(await chromium.executablePath()))';
  try {
    const file = execFileSync(process.execPath, ["-e", script], { cwd: path.join(__dirname, "../.."), encoding: "utf8" }).trim();
    return existsSync(file) ? file : undefined;
  } catch {
    return undefined;
  }
}
