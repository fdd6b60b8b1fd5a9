"use strict";
// Some packages under the local workbook's grid hold ES modules only, which jest cannot require. Each is bundled as it is entered, since one
// alone spreads over a thousand files, and loading them anew for every test file would take longer than most tests.
const fs = require("node:fs");
const path = require("node:path");
const { createHash } = require("node:crypto");
const { buildSync, version } = require("esbuild");

const BUNDLE = { bundle: true, format: "cjs", platform: "node", write: false };
const packages = new Map();

/** What the package.json above a folder says. */
function packageOf(folder) {
  if (!packages.has(folder)) {
    const file = path.join(folder, "package.json");
    packages.set(folder, fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, "utf8")) : packageOf(path.dirname(folder)));
  }
  return packages.get(folder);
}

/** True where Node takes a file for an ES module. */
const isModule = (file) => file.endsWith(".mjs") || (file.endsWith(".js") && packageOf(path.dirname(file)).type === "module");

/** The file with all it imports, as CommonJS; what it holds is pure functions, so that two bundles may hold the same ones. */
function bundled(file) {
  const { outputFiles } = buildSync({ ...BUNDLE, entryPoints: [file] });
  return outputFiles[0].text;
}

module.exports = {
  getCacheKey: (source, file) =>
    createHash("sha256")
      .update(JSON.stringify([version, BUNDLE, packageOf(path.dirname(file)).version, isModule(file), source]))
      .digest("hex"),
  process: (source, file) => ({ code: isModule(file) ? bundled(file) : source }),
};
