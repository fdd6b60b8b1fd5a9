"use strict";
// A webpack plugin that writes the local workbook's service worker: after one visit the page opens without a network. Never for the add-in.
const { createHash } = require("node:crypto");
const fs = require("node:fs");
const path = require("node:path");
const { Compilation, sources } = require("webpack");

const FILE = "offline.js";
const TEMPLATE = path.join(__dirname, "offlineTemplate.js");
// An earlier build of the same run writes it into the folder.
const BESIDES = "functions.js";
const FOR_THE_HOST = /^(_headers|\.htaccess|licences\/|help\/installing\.html)/;

class OfflineWorker {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("OfflineWorker", (compilation) => {
      // When every name is settled.
      const when = { name: "OfflineWorker", stage: Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_HASH + 2 };
      compilation.hooks.processAssets.tap(when, (assets) => {
        const built = Object.keys(assets).filter((name) => !FOR_THE_HOST.test(name));
        const content = createHash("sha256");
        for (const name of built.sort()) content.update(name).update(assets[name].buffer());
        content.update(fs.readFileSync(path.join(compilation.outputOptions.path, BESIDES)));
        const template = fs.readFileSync(TEMPLATE, "utf8");
        const text = template
          .replace('"FILES"', JSON.stringify([...built, BESIDES].sort(), null, 2))
          .replace("BUILD", content.digest("hex").slice(0, 16));
        compilation.emitAsset(FILE, new sources.RawSource(text), { minimized: true });
      });
    });
  }
}

module.exports = OfflineWorker;
module.exports.FILE = FILE;
