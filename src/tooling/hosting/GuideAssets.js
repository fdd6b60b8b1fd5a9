"use strict";
// A webpack plugin that writes what a host needs: the guide to installing as a help page, and the server rules for the built folder as files.
const path = require("node:path");
const { Compilation, sources } = require("webpack");
require("../typescriptHook");

const HELP = path.resolve(__dirname, "../../help");

class GuideAssets {
  /** @param {{ folder: string, pages: string[] }} options path on its host that the folder is served from; its files of fixed names beside the common ones */
  constructor(options) {
    this.options = options;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("GuideAssets", (compilation) => {
      const when = { name: "GuideAssets", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
      compilation.hooks.processAssets.tap(when, () => {
        compilation.contextDependencies.add(HELP);
        for (const [name, text] of this.files()) compilation.emitAsset(name, new sources.RawSource(text));
      });
    });
  }

  files() {
    const { installingPage, INSTALLING_FILE } = require(path.join(HELP, "installing/installingPage.ts"));
    const { apacheRules, headersFile } = require(path.join(HELP, "installing/serverRules.ts"));
    const { folder, pages } = this.options;
    return [
      [`help/${INSTALLING_FILE}`, installingPage()],
      ["_headers", headersFile(folder, pages)],
      [".htaccess", apacheRules()],
    ];
  }
}

module.exports = GuideAssets;
