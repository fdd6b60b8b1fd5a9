// A static web server for one folder, for this computer only.
import { constants } from "node:fs";
import { open, realpath } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";
import { pipeline } from "node:stream/promises";

const HERE = "127.0.0.1";
const PORTS_TRIED = 20;
const HIGHEST_PORT = 65_535;

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
};

// The pages hold stricter policies of their own; this one covers whatever else is asked for.
const POLICY =
  "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; worker-src 'self' blob:; object-src 'none'; base-uri 'none'; frame-ancestors 'self'";

/**
 * Serves the folder on 127.0.0.1, on the first free port from the given one; port 0 takes any free one.
 * @returns {Promise<{ address: string, close: () => void }>}
 */
export async function staticServer(folder, port) {
  const root = await realpath(folder);
  const server = createServer((request, response) => {
    // A request that cannot be answered to its end concerns nobody but the one who asked.
    answer(root, request, response).catch(() => response.destroy());
  });
  const taken = await firstFree(server, port);
  const close = () => {
    server.close();
    server.closeAllConnections();
  };
  return { address: `http://${HERE}:${taken}/`, close };
}

async function answer(root, request, response) {
  const { method = "", url = "/", headers } = request;
  if (!isOwnName(headers.host ?? "")) return say(response, 421, "This server answers to localhost and 127.0.0.1 alone.");
  const file = method === "GET" || method === "HEAD" ? await fileFor(root, url) : undefined;
  if (file === undefined) return say(response, 404, "Not found");
  try {
    response.writeHead(200, {
      "Content-Type": TYPES[path.extname(file.name)] ?? "application/octet-stream",
      "Content-Length": file.size,
      "Content-Security-Policy": POLICY,
      "X-Content-Type-Options": "nosniff",
      "Cache-Control": "no-store",
      // A part that is asked for is answered with the whole, which every browser takes.
      "Accept-Ranges": "none",
    });
    if (method === "HEAD" || file.size === 0) response.end();
    else await pipeline(file.handle.createReadStream({ autoClose: false, end: file.size - 1 }), response);
  } finally {
    await file.handle.close();
  }
}

const say = (response, status, text) => void response.writeHead(status, { "Content-Type": TYPES[".txt"] }).end(text);

/**
 * True for names that can only mean this computer. A page of another site can have its own name answered with 127.0.0.1 and would then be
 * taken for a page of this server; browsers never ask the network about names that end in .localhost (RFC 6761, 6.3).
 */
const isOwnName = (host) => /^(?:localhost|(?:[a-z0-9-]+\.)+localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i.test(host);

/** The file an address asks for, opened, or undefined: never one outside the folder, by whatever name or link, nor one that cannot be read. */
async function fileFor(root, url) {
  let handle;
  try {
    const asked = decodeURIComponent(url.split(/[?#]/, 1)[0]);
    const name = path.resolve(root, `.${path.sep}${asked.endsWith("/") ? `${asked}index.html` : asked}`);
    if (asked.includes("\0") || !name.startsWith(root + path.sep) || (await realpath(name)) !== name) return undefined;
    // Not waiting for the other end of what is no file but a pipe.
    handle = await open(name, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (constants.O_NOFOLLOW ?? 0));
    const about = await handle.stat();
    if (about.isFile()) return { handle, name, size: about.size };
  } catch {
    // Not there, not readable, or no address.
  }
  await handle?.close();
  return undefined;
}

async function firstFree(server, port) {
  const last = port === 0 ? 0 : Math.min(port + PORTS_TRIED - 1, HIGHEST_PORT);
  for (let candidate = port; candidate <= last; candidate++) {
    const taken = await listening(server, candidate);
    if (taken !== undefined) return taken;
  }
  throw new Error(`No free port from ${port} to ${last}. Close another server, or give another --port.`);
}

const listening = (server, port) =>
  new Promise((resolve, reject) => {
    const refused = (problem) => (problem.code === "EADDRINUSE" || problem.code === "EACCES" ? resolve(undefined) : reject(problem));
    server.once("error", refused);
    server.listen(port, HERE, () => {
      server.off("error", refused);
      resolve(server.address().port);
    });
  });
