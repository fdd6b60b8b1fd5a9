import { readFileSync } from "node:fs";
import type { ExcelHost } from "./ExcelHost";
import { offerFunctionRegistry } from "./offerFunctionRegistry";
import { offerOffice } from "./offerOffice";

/** The Excel client libraries in @microsoft/office-js, in their readable builds, by where they run. */
const LIBRARIES = { web: "excel-web-16.00.debug.js", Windows: "excel-win32-16.01.debug.js", Mac: "excel-mac-16.00.debug.js" } as const;

/**
 * Loads the real Excel client library into this realm and ties it to the host: `Excel`, `OfficeExtension`, `Office` and
 * `CustomFunctions` are then what an add-in finds. The library keeps its bridge, so one host serves a test file.
 */
export function loadClientLibrary(host: ExcelHost, platform: keyof typeof LIBRARIES = "web"): void {
  const global = globalThis as unknown as Record<string, unknown>;
  imitatePage(global);
  offerFunctionRegistry(global);
  global._richApiNativeBridge = host.bridge;
  const file = require.resolve(`@microsoft/office-js/dist/${LIBRARIES[platform]}`);
  (0, eval)(`${readFileSync(file, "utf8")}\n//# sourceURL=${file}`);
  offerOffice(global, host);
  // The library lets go of its ranges after the last answer. A benchmark has no such hook and needs none.
  if (typeof afterAll === "function") afterAll(() => host.quiet());
}

/** As much of a page as the library touches while it loads. */
function imitatePage(global: Record<string, unknown>): void {
  const element = (): object => ({ setAttribute: ignore, appendChild: ignore, style: {}, addEventListener: ignore, getElementsByTagName: () => [] });
  Object.assign(global, { window: global, self: global, top: global, parent: global, history: {}, addEventListener: ignore });
  global.location = { href: "http://localhost/", search: "", hash: "", protocol: "http:", host: "localhost", hostname: "localhost" };
  global.sessionStorage = { getItem: () => null, setItem: ignore };
  global.document = {
    getElementsByTagName: () => [],
    createElement: element,
    head: element(),
    body: element(),
    readyState: "complete",
    addEventListener: ignore,
    cookie: "",
  };
  global.navigator ??= { userAgent: "node", language: "en-US" };
}

const ignore = (): void => undefined;
