import { build } from "esbuild";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";

const ROOT = path.join(__dirname, "../..");
const ADDIN = path.join(ROOT, "src/addin");
const TYPES: Readonly<Record<string, string>> = { ".js": "text/javascript", ".css": "text/css", ".html": "text/html" };

export interface ServedPane {
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves the pane as Excel opens it: its own page and policy, its sources bundled, and in the place of office.js the real
 * Excel client library with the in-memory host in front of it.
 * @param library false where the library is out of reach
 */
export async function serveExcelPane(library: boolean): Promise<ServedPane> {
  const files = await paneFiles();
  if (library) files.set("/office/office.js", await officeLibrary());
  const server = createServer(({ url = "/" }, response) => {
    const body = files.get(url.split("?")[0] ?? "/");
    if (body === undefined) return void response.writeHead(url === "/favicon.ico" ? 204 : 404).end();
    response.writeHead(200, { "content-type": TYPES[path.extname(url.split("?")[0] ?? "")] ?? "application/octet-stream" }).end(body);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => new Promise((done) => void server.close(() => done())) };
}

async function paneFiles(): Promise<Map<string, string>> {
  const page = readFileSync(path.join(ADDIN, "taskpane.html"), "utf8").replaceAll("%OFFICE_LIBRARY%", "office").replaceAll("%OFFICE_ORIGIN%", "");
  const script = await bundled(path.join(ADDIN, "pane.ts"));
  const style = await bundled(path.join(ROOT, "src/pane/pane.css"));
  return new Map([
    ["/taskpane.html", page],
    ["/taskpane.js", script],
    ["/taskpane.css", style],
  ]);
}

async function officeLibrary(): Promise<string> {
  const before = await bundled(path.join(__dirname, "page/beforeLibrary.ts"));
  const library = readFileSync(require.resolve("@microsoft/office-js/dist/excel-web-16.00.debug.js"), "utf8");
  return `${before}\n${library}\nfinishOffice();`;
}

async function bundled(entry: string): Promise<string> {
  const define = { RETORT_VERSION: JSON.stringify("0.0.0") };
  const { outputFiles } = await build({ entryPoints: [entry], bundle: true, format: "iife", write: false, define, logLevel: "silent" });
  return outputFiles[0]?.text ?? "";
}
