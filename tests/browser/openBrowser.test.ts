import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { openBrowser } from "./openBrowser";

const namedBefore = process.env.RETORT_BROWSER;
const folder = mkdtempSync(path.join(tmpdir(), "browser-"));
afterAll(() => {
  if (namedBefore === undefined) delete process.env.RETORT_BROWSER;
  else process.env.RETORT_BROWSER = namedBefore;
  rmSync(folder, { recursive: true });
});

test("a RETORT_BROWSER that does not exist is an error that says what to give", async () => {
  process.env.RETORT_BROWSER = "no/such/browser";
  await expect(openBrowser()).rejects.toThrow(
    "RETORT_BROWSER names no/such/browser, which does not exist. Give the path of a Chrome, Edge or Chromium executable.",
  );
});

/** A program that says this and ends, as one whose libraries are missing does. */
function browserThatSays(said: string): string {
  const file = path.join(folder, "browser");
  writeFileSync(file, `#!/bin/sh\necho '${said}' >&2\nexit 127\n`, { mode: 0o755 });
  process.env.RETORT_BROWSER = file;
  return file;
}

const onPosix = process.platform === "win32" ? test.skip : test;

onPosix.each([
  ["libnspr4.so", "On Debian or Ubuntu: apt-get install libnspr4"],
  ["libgbm.so.1", "On Debian or Ubuntu: apt-get install libgbm1"],
  ["libunheard.so.7", "Install the system package that holds it."],
])("a browser without %s is an error that says: %s", async (library, mend) => {
  const file = browserThatSays(
    `browser: error while loading shared libraries: ${library}: cannot open shared object file: No such file or directory`,
  );
  await expect(openBrowser()).rejects.toThrow(`The browser ${file} did not start, because the system library ${library} is missing. ${mend}`);
});

onPosix("a browser that ends for another reason is an error that says what it said", async () => {
  const file = browserThatSays("no room left");
  await expect(openBrowser()).rejects.toThrow(new RegExp(`The browser ${file} did not start:\n[^]*no room left`));
});
