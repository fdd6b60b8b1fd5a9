"use strict";
// The build of functions.js, the same for the add-in and for the local workbook.
const path = require("node:path");
const withoutProse = require("./withoutProse");

const SRC = path.resolve(__dirname, "..");
const ENTRY = path.join(SRC, "cells/register.ts");

/** @param {string} name of this build @param {string} folder the files go to @param {string} mode */
module.exports = (name, folder, mode) => ({
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
  performance: { hints: false },
});
