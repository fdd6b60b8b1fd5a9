import { readdirSync, readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import path from "node:path";
import ts from "typescript";

const ROOT = path.join(__dirname, "../..");
const CODE = /\.(ts|js|mjs)$/;
const { devDependencies } = JSON.parse(readFileSync(path.join(ROOT, "package.json"), "utf8")) as { devDependencies: Record<string, string> };

const below = (folder: string): string[] =>
  readdirSync(path.join(ROOT, folder), { recursive: true, encoding: "utf8" }).map((file) => `${folder}/${file.replaceAll("\\", "/")}`);
const files = ["webpack.config.js", "eslint.config.mjs", ...below("src"), ...below("tests")].filter((file) => CODE.test(file));

const packageName = (specifier: string): string =>
  specifier
    .split("/")
    .slice(0, specifier.startsWith("@") ? 2 : 1)
    .join("/");

/** Every package that a file imports, requires or resolves. */
function packagesOf(file: string): string[] {
  const text = readFileSync(path.join(ROOT, file), "utf8");
  const imported = ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
  const resolved = [...text.matchAll(/\brequire(?:Actual<[^>]*>)?\.?(?:resolve)?\(\s*["']([^"']+)["']/g)].map(([, name = ""]) => name);
  return [...imported, ...resolved].filter((name) => !name.startsWith(".") && !path.isAbsolute(name) && !isBuiltin(name)).map(packageName);
}

test("every package that src, tests or a configuration imports is declared in package.json", () => {
  const uses = files.flatMap((file) => packagesOf(file).map((name) => ({ file, name })));
  expect(new Set(uses.map(({ name }) => name)).size).toBeGreaterThan(20);
  expect(uses.filter(({ name }) => devDependencies[name] === undefined)).toEqual([]);
});
