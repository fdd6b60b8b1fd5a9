import { spawnSync } from "node:child_process";
import { request } from "node:http";
import path from "node:path";
import { serveWorkbench, type ServedWorkbench } from "./serveWorkbench";

const ROOT = path.join(__dirname, "../..");

jest.setTimeout(30_000);

let server: ServedWorkbench;
beforeAll(async () => {
  server = await serveWorkbench();
});
afterAll(() => server?.close());

/** Asks for a path exactly as given; fetch would tidy it first. */
function ask(asked: string, method = "GET"): Promise<{ status: number; type: string; policy: string; body: string }> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(server.address);
    request({ hostname, port, path: asked, method }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => (body += text));
      response.on("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          type: String(response.headers["content-type"]),
          policy: String(response.headers["content-security-policy"] ?? ""),
          body,
        }),
      );
    })
      .on("error", reject)
      .end();
  });
}

test.each([
  ["/", "text/html; charset=utf-8"],
  ["/pane.html?a=1", "text/html; charset=utf-8"],
  ["/functions.js", "text/javascript; charset=utf-8"],
  ["/functions.json", "application/json; charset=utf-8"],
  ["/help/help.css", "text/css; charset=utf-8"],
  ["/help/", "text/html; charset=utf-8"],
])("%s is served as %s with a policy that allows no other origin and no eval", async (asked, type) => {
  const answer = await ask(asked);
  expect(answer).toMatchObject({ status: 200, type });
  expect(answer.policy).toMatch(/^default-src 'self'; script-src 'self';/);
  expect(answer.policy).not.toMatch(/unsafe-eval|https?:|\*/);
});

test.each([
  "/../../package.json",
  "/..%2f..%2fpackage.json",
  "/%2e%2e/%2e%2e/package.json",
  "/..\\..\\package.json",
  "//etc/passwd",
  "/%00",
  "/%",
  "/nothing.js",
  "/help",
])("%s is not found, and nothing outside the folder is given away", async (asked) => {
  expect(await ask(asked)).toEqual({ status: 404, type: "text/plain; charset=utf-8", policy: "", body: "Not found" });
});

test("anything but reading is refused", async () => {
  expect((await ask("/", "POST")).status).toBe(404);
});

test("a second server takes the next free port", async () => {
  const second = await serveWorkbench();
  expect(Number(new URL(second.address).port)).toBeGreaterThan(Number(new URL(server.address).port));
  second.close();
});

test.each(["soon", "4.5", "4173a", "0x50", "1e3", "-1", "99999", ""])("the port %j is refused in words", (port) => {
  const { status, stderr } = spawnSync(process.execPath, ["src/tooling/serve.mjs", `--port=${port}`], { cwd: ROOT, encoding: "utf8" });
  const said = `--port: "${port}" is not a port. Give a whole number from 0 to 65535, such as 4173.`;
  expect({ status, stderr: stderr.trim() }).toEqual({ status: 1, stderr: said });
});
