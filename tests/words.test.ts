import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const ROOT = path.join(__dirname, "..");
const TEXT = /\.(ts|js|mjs|md|xml|html|css|json|svg)$/;

const files = ["src", "tests"]
  .flatMap((folder) => readdirSync(path.join(ROOT, folder), { recursive: true, encoding: "utf8" }).map((file) => path.join(folder, file)))
  .concat(["README.md", "DEVELOPERS.md", "manifest.xml", "package.json", "webpack.config.js"])
  .filter((file) => TEXT.test(file) && !file.includes("screenshots"));

const textOf = (file: string): string => readFileSync(path.join(ROOT, file), "utf8");

// The product gives cautions and defers to local codes; it never declares anything free of danger.
test.each(files.filter((file) => !file.startsWith("tests")))("%s never calls anything safe", (file) => {
  expect(textOf(file)).not.toMatch(/\bsafe(ly|ty|r|st)?\b/i);
});

test.each(files.filter((file) => !file.endsWith("words.test.ts")))("%s names no machine path", (file) => {
  expect(textOf(file)).not.toMatch(/\/(work|tmp|root|home)\/|[A-Z]:\\Users/);
  // The invented home of the simulated Mac is allowed.
  expect(textOf(file)).not.toMatch(/\/Users\/(?!sam\b)/);
});

// Where a machine fetches its packages from is its own affair, and a lock file that names a place ties everyone to it.
test.each([...files.filter((file) => !file.endsWith("words.test.ts")), "package-lock.json", ".ci/run"])("%s names no registry", (file) => {
  expect(textOf(file)).not.toMatch(/\b(npmjs|yarnpkg|jsr\.io|pypi|debian\.org|\bregistry\.[a-z]+\.[a-z]+\b|"resolved":)/i);
});
