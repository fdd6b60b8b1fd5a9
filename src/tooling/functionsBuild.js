"use strict";
// The build of functions.js: one for the add-in, and the same file for the local workbook.
const path = require("node:path");
const { Compilation } = require("webpack");
const withoutProse = require("./withoutProse");

const SRC = path.resolve(__dirname, "..");
const ENTRY = path.join(SRC, "cells/register.ts");
const FILE = "functions.js";

// Excel on Windows runs functions.js in an engine documented as ECMAScript 2016 (office-js-docs-pr, issue 4496).
const LANGUAGE = "ES2016";
// What the catalogue calls of later editions. tests/functions/es2016/laterBuiltIns.test.ts finds what is missing there by its type, on every path.
const LATER_BUILT_INS = path.join(SRC, "cells/laterBuiltIns.ts");

/** Puts the finished file into another folder too: building it a second time would give the same bytes. */
class AlsoInto {
  constructor(folder) {
    this.folder = folder;
  }

  apply(compiler) {
    const stage = Compilation.PROCESS_ASSETS_STAGE_REPORT;
    compiler.hooks.thisCompilation.tap("AlsoInto", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "AlsoInto", stage }, () => {
        const { source, info } = compilation.getAsset(FILE);
        compilation.emitAsset(path.posix.join(path.relative(compilation.outputOptions.path, this.folder).replaceAll("\\", "/"), FILE), source, info);
      });
    });
  }
}

/** @param {string} name of this build @param {string} folder the file goes to @param {string} secondFolder wanted there too @param {string} mode */
module.exports = (name, folder, secondFolder, mode) => ({
  name,
  mode,
  target: ["web", LANGUAGE.toLowerCase()],
  // Left alone: what webpack puts in place of `global` looks for a window.
  node: { global: false },
  devtool: false,
  entry: { functions: [LATER_BUILT_INS, ENTRY] },
  output: { path: folder, filename: "[name].js" },
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [
      {
        test: /\.ts$/,
        exclude: /node_modules/,
        use: {
          loader: "ts-loader",
          options: {
            transpileOnly: true,
            compilerOptions: { noEmit: false, target: LANGUAGE },
            getCustomTransformers: () => ({ before: [withoutProse] }),
          },
        },
      },
      // Only these two do anything by being loaded, so whatever served the prose alone is dropped with it.
      { test: /\.ts$/, exclude: [/node_modules/, LATER_BUILT_INS, ENTRY], sideEffects: false },
    ],
  },
  plugins: [new AlsoInto(secondFolder)],
  performance: { hints: false },
});
