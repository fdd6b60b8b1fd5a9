"use strict";
// The build of functions.js: one for the add-in, and the same file for the local workbook.
const path = require("node:path");
const { Compilation } = require("webpack");
const withoutProse = require("./withoutProse");

const SRC = path.resolve(__dirname, "..");
const ENTRY = path.join(SRC, "cells/register.ts");
const FILE = "functions.js";

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
  target: ["web", "es2020"],
  devtool: false,
  entry: { functions: ENTRY },
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
            compilerOptions: { noEmit: false, target: "ES2020" },
            getCustomTransformers: () => ({ before: [withoutProse] }),
          },
        },
      },
      // Only the entry does anything by being loaded, so whatever served the prose alone is dropped with it.
      { test: /\.ts$/, exclude: [/node_modules/, ENTRY], sideEffects: false },
    ],
  },
  plugins: [new AlsoInto(secondFolder)],
  performance: { hints: false },
});
