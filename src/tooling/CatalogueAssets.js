"use strict";
// A webpack plugin that writes what is made from the catalogue of cell functions: functions.json and the reference pages.
const path = require("node:path");
const { Compilation, sources } = require("webpack");
require("./typescriptHook");

const SRC = path.resolve(__dirname, "..");

/** @param {string} file below src, without its ending; read afresh, so that a watching build sees changes */
function fresh(file) {
  for (const key of Object.keys(require.cache)) if (key.startsWith(SRC) && key.endsWith(".ts")) delete require.cache[key];
  return require(path.join(SRC, `${file}.ts`));
}

class CatalogueAssets {
  /** @param {{ address: string, help: boolean }} options address the pages will be served from; help: write the reference pages too */
  constructor(options) {
    this.options = options;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("CatalogueAssets", (compilation) => {
      const when = { name: "CatalogueAssets", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
      compilation.hooks.processAssets.tap(when, () => {
        compilation.contextDependencies.add(SRC);
        for (const [name, text] of this.files()) compilation.emitAsset(name, new sources.RawSource(text));
      });
    });
  }

  files() {
    const { functionsMetadata } = fresh("cells/metadata");
    const { catalogue, everyFunction } = require(path.join(SRC, "functions/catalogue.ts"));
    const { functionPage, functionPageFile } = require(path.join(SRC, "help/functionPage.ts"));
    const { everyGuide } = require(path.join(SRC, "help/guides/everyGuide.ts"));
    const { guideFile, guidePage } = require(path.join(SRC, "help/guides/guidePage.ts"));
    const { indexPage } = require(path.join(SRC, "help/indexPage.ts"));
    const metadata = functionsMetadata(everyFunction, (name) => `${this.options.address}/help/${functionPageFile(name)}`);
    const json = [["functions.json", JSON.stringify(metadata, null, 1)]];
    if (!this.options.help) return json;
    const pages = everyFunction.map((definition) => [`help/${functionPageFile(definition.name)}`, functionPage(definition)]);
    const guides = everyGuide.map((guide) => [`help/${guideFile(guide)}`, guidePage(guide)]);
    return [...json, ["help/index.html", indexPage(catalogue)], ...pages, ...guides];
  }
}

module.exports = CatalogueAssets;
