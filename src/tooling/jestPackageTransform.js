"use strict";
// Some packages under the local workbook's grid hold ES modules only, which jest cannot require: those files are transpiled, all others left alone.
const fs = require("node:fs");
const path = require("node:path");
const { createHash } = require("node:crypto");
const { transformSync, version } = require("esbuild");

const kinds = new Map();

/** True where Node takes the .js files of a folder for ES modules. */
function holdsModules(folder) {
  if (!kinds.has(folder)) {
    const file = path.join(folder, "package.json");
    kinds.set(folder, fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, "utf8")).type === "module" : holdsModules(path.dirname(folder)));
  }
  return kinds.get(folder);
}

const isModule = (file) => file.endsWith(".mjs") || (file.endsWith(".js") && holdsModules(path.dirname(file)));

module.exports = {
  getCacheKey: (source, file) =>
    createHash("sha256")
      .update(`${version}\0${isModule(file)}\0${source}`)
      .digest("hex"),
  process: (source, file) => ({ code: isModule(file) ? transformSync(source, { format: "cjs", loader: "js" }).code : source }),
};
