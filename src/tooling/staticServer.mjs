// A static web server for one folder, for this computer only.
import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import path from "node:path";

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
  const server = createServer((request, response) => answer(path.resolve(folder), request, response));
  const taken = await firstFree(server, port);
  return { address: `http://${HERE}:${taken}/`, close: () => server.close() };
}

function answer(root, request, response) {
  const file = request.method === "GET" || request.method === "HEAD" ? fileFor(root, request.url ?? "/") : undefined;
  if (file === undefined) {
    response.writeHead(404, { "Content-Type": TYPES[".txt"] }).end("Not found");
    return;
  }
  response.writeHead(200, {
    "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Cache-Control": "no-store",
  });
  if (request.method === "HEAD") response.end();
  else createReadStream(file).pipe(response);
}

/** The file an address asks for, or undefined: never one outside the folder. */
function fileFor(root, url) {
  try {
    const asked = decodeURIComponent(url.split(/[?#]/, 1)[0]);
    const file = path.resolve(root, `.${path.sep}${asked.endsWith("/") ? `${asked}index.html` : asked}`);
    if (!file.startsWith(root + path.sep) || asked.includes("\0")) return undefined;
    return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
  } catch {
    return undefined;
  }
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
