import { spawn, spawnSync, type ChildProcess } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request, type IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

jest.setTimeout(30_000);

const ROOT = path.join(__dirname, "../..");
const MODULE = pathToFileURL(path.join(ROOT, "src/tooling/staticServer.mjs")).href;
// On Windows making a link is a right of administrators, and a file's owner can always read it.
const HAS_LINKS = process.platform !== "win32";
const LARGE = 20_000_000;
// An administrator reads every file, so the server gives that right up where it has it.
const SCRIPT = `const { staticServer } = await import(process.argv[1]);
const { address } = await staticServer(process.argv[2], 0);
if (process.getuid?.() === 0) process.setuid(65534);
console.log(address);`;

let around: string;
let server: ChildProcess;
let port = 0;
beforeAll(async () => {
  around = mkdtempSync(path.join(tmpdir(), "retort-server-"));
  chmodSync(around, 0o755);
  const folder = path.join(around, "dist");
  for (const made of [folder, path.join(folder, "help"), path.join(around, "dist-other"), path.join(folder, "a.html")]) mkdirSync(made);
  const write = (name: string, text: string | Buffer): void => writeFileSync(path.join(around, name), text);
  write("dist/index.html", "<p>kiln</p>");
  write("dist/empty.txt", "");
  write("dist/large.js", Buffer.alloc(LARGE, 32));
  write("dist/help/index.html", "<p>help</p>");
  write("secret.txt", "secret");
  write("dist-other/secret.txt", "secret");
  if (HAS_LINKS) linksAndLocks(folder);
  server = spawn(process.execPath, ["--input-type=module", "-e", SCRIPT, "--", MODULE, folder], { stdio: ["ignore", "pipe", "inherit"] });
  port = await new Promise((resolve) => server.stdout?.once("data", (text: Buffer) => resolve(Number(new URL(text.toString().trim()).port))));
});
afterAll(() => {
  server?.kill();
  rmSync(around, { recursive: true, force: true });
});

/** Everything in a folder that is no file to be given away. */
function linksAndLocks(folder: string): void {
  writeFileSync(path.join(folder, "locked.txt"), "locked");
  chmodSync(path.join(folder, "locked.txt"), 0o000);
  symlinkSync(path.join(around, "secret.txt"), path.join(folder, "link.txt"));
  symlinkSync(path.join(around, "dist-other"), path.join(folder, "linked"));
  symlinkSync(path.join(folder, "round.txt"), path.join(folder, "round.txt"));
  spawnSync("mkfifo", [path.join(folder, "pipe.txt")]);
}

interface Asked {
  readonly method?: string;
  readonly host?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

const answerTo = (asked: string, { method = "GET", host = `127.0.0.1:${port}`, headers = {} }: Asked = {}): Promise<IncomingMessage> =>
  new Promise((resolve, reject) => {
    request({ host: "127.0.0.1", port, path: asked, method, headers: { host, ...headers } }, resolve)
      .on("error", reject)
      .end();
  });

async function ask(asked: string, how: Asked = {}): Promise<{ status: number; length: string; body: string }> {
  const response = await answerTo(asked, how);
  let body = "";
  for await (const text of response.setEncoding("utf8")) body += String(text);
  return { status: response.statusCode ?? 0, length: String(response.headers["content-length"]), body };
}

test.each([
  ["/", "<p>kiln</p>"],
  ["/index.html?x=1#y", "<p>kiln</p>"],
  ["/help/", "<p>help</p>"],
  ["/empty.txt", ""],
])("%s is answered with the file and its length; asking for the head alone with the length alone", async (asked, body) => {
  const length = String(body.length);
  expect(await ask(asked)).toEqual({ status: 200, length, body });
  expect(await ask(asked, { method: "HEAD" })).toEqual({ status: 200, length, body: "" });
});

test("a part of a file that is asked for is answered with the whole, and said not to be possible", async () => {
  expect(await ask("/", { headers: { range: "bytes=3-5" } })).toEqual({ status: 200, length: "11", body: "<p>kiln</p>" });
  const { headers } = await answerTo("/");
  expect(headers["accept-ranges"]).toBe("none");
});

test.each([
  "/link.txt",
  "/linked/secret.txt",
  "/linked/",
  "/round.txt",
  "/pipe.txt",
  "/locked.txt",
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/%2e%2e%2fdist-other%2fsecret.txt",
  "/../dist-other/secret.txt",
  "/help/../../secret.txt",
  "/..%5csecret.txt",
  "/index.html%00",
  "/a.html",
  "/help",
  "//etc/passwd",
  "http://127.0.0.1/secret.txt",
  "/%ff",
])("%s is not found: links, pipes, what cannot be read, folders and whatever is outside", async (asked) => {
  expect(await ask(asked)).toMatchObject({ status: 404, body: "Not found" });
});

test.each(["localhost", "LOCALHOST:4173", "127.0.0.1", "[::1]:4173", "retort.localhost:4173"])("%s is a name of this computer", async (host) => {
  expect((await ask("/", { host })).status).toBe(200);
});

test.each([
  "example.org",
  "localhost.example.org",
  "127.0.0.1.example.org:4173",
  "127.0.0.2",
  "0.0.0.0",
  "notlocalhost",
  "localhost:4173@example.org",
])("a page that reaches this server under the name %j is refused", async (host) => {
  const { status, body } = await ask("/", { host });
  expect([status, body]).toEqual([421, "This server answers to localhost and 127.0.0.1 alone."]);
});

test("downloads that are broken off leave the server answering and no file open", async () => {
  const openFiles = (): number => (process.platform === "linux" ? readdirSync(`/proc/${server.pid}/fd`).length : 0);
  await ask("/");
  const before = openFiles();
  await Promise.all(
    Array.from({ length: 20 }, async () => {
      const response = await answerTo("/large.js");
      await new Promise((resolve) => response.once("data", resolve));
      response.destroy();
    }),
  );
  expect((await ask("/large.js")).body).toHaveLength(LARGE);
  for (let tries = 0; openFiles() > before + 2 && tries < 100; tries++) await new Promise((resolve) => setTimeout(resolve, 20));
  expect(openFiles()).toBeLessThanOrEqual(before + 2);
  expect(server.exitCode).toBeNull();
});

test.each([
  ["src/tooling/serve.mjs", "npm start", "--port"],
  ["src/tooling/mutants/mutants.mjs", "npm run mutants", "--sample"],
])("%s --help says what it does and names every option", (script, command, option) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, "--help"], { cwd: ROOT, encoding: "utf8" });
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout.startsWith(command)).toBe(true);
  expect(stdout).toContain(`${option} <number>`);
  expect(stdout).toContain("--help");
});
