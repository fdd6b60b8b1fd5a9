"use strict";
// The build of functions.js: one for the add-in, and the same file for the local workbook.
const path = require("node:path");
const { Compilation, DefinePlugin } = require("webpack");
const withoutProse = require("./withoutProse");

const SRC = path.resolve(__dirname, "..");
const ENTRY = path.join(SRC, "cells/register.ts");
const FILE = "functions.js";

// Excel on Windows runs functions.js in an engine documented as ECMAScript 2016 (office-js-docs-pr, issue 4496).
const LANGUAGE = "ES2016";
// What the catalogue calls of later editions. tests/functions/es2016/polyfills.test.ts finds one that is missing here by its type, on every path.
const POLYFILLS = ["array.at", "array.flat-map", "object.entries", "object.from-entries", "string.trim-end", "string.trim-start"].map(
  (name) => `core-js/modules/es.${name}`,
);
// There is no page in that engine; core-js looks for one all the same.
const NO_PAGE = Object.fromEntries(["window", "self", "document"].map((name) => [`typeof ${name}`, JSON.stringify("undefined")]));

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
  entry: { functions: [...POLYFILLS, ENTRY] },
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
      // Only the entry does anything by being loaded, so whatever served the prose alone is dropped with it.
      { test: /\.ts$/, exclude: [/node_modules/, ENTRY], sideEffects: false },
    ],
  },
  plugins: [new DefinePlugin(NO_PAGE), new AlsoInto(secondFolder)],
  performance: { hints: false },
});
