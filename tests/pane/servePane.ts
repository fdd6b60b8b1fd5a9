import { build } from "esbuild";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";

/** The policy that every page of the product carries, in its strictest form. */
const POLICY = "default-src 'self'";
const PAGE = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Pane</title><meta name="viewport" content="width=device-width">
<link rel="icon" href="/pane.css"><link rel="stylesheet" href="/pane.css"><script type="module" src="/entry.js"></script></head><body><div id="pane"></div></body></html>`;
const TYPES: Readonly<Record<string, string>> = { ".js": "text/javascript", ".css": "text/css", "": "text/html" };

/** Bundles the pane with its invented workbook and serves it from memory under a strict content security policy. */
export async function servePane(): Promise<{ address: string; close: () => Promise<void> }> {
  const bundled = await build({
    entryPoints: [path.join(__dirname, "page/entry.ts"), path.join(__dirname, "../../src/pane/pane.css")],
    bundle: true,
    splitting: true,
    format: "esm",
    outdir: path.join(__dirname, "bundle"),
    write: false,
    logLevel: "silent",
  });
  const files = new Map(bundled.outputFiles.map((file) => [`/${path.basename(file.path)}`, Buffer.from(file.contents)]));
  const server = createServer(({ url = "/" }, response) => {
    const name = url.split("?")[0] ?? "/";
    const body = name === "/" ? PAGE : files.get(name);
    if (body === undefined) return void response.writeHead(404).end();
    response.writeHead(200, { "content-type": TYPES[path.extname(name)], "content-security-policy": POLICY });
    response.end(body);
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, close: () => closed(server) };
}

const closed = (server: Server): Promise<void> => new Promise((done) => void server.close(() => done()));
