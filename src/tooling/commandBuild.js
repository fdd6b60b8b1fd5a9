"use strict";
// The command line, for Node alone: one file to start, and one beside it with the grid's engine, which is loaded only where it calculates.
const path = require("node:path");
const { BannerPlugin, DefinePlugin, IgnorePlugin } = require("webpack");
const TerserPlugin = require("terser-webpack-plugin");
const Licences = require("./hosting/Licences");
const workbench = require("../workbench/webpack.workbench");
const { version } = require("../../package.json");

// The browser's stand-ins for Node's own modules are not wanted here, and the locks of archives are left out as in the local workbook.
module.exports = {
  name: "command",
  target: "node20",
  devtool: false,
  context: workbench.context,
  entry: { retort: "./src/command/main.ts" },
  output: { path: path.resolve(workbench.context, "dist/command"), filename: "[name].cjs", chunkFilename: "[name].cjs", clean: true },
  resolve: { extensions: workbench.resolve.extensions, alias: workbench.resolve.alias },
  module: {
    rules: [
      {
        test: /\.ts$/,
        exclude: /node_modules/,
        use: { loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
      },
    ],
  },
  plugins: [
    new DefinePlugin({ RETORT_VERSION: JSON.stringify(version) }),
    new IgnorePlugin({ resourceRegExp: /^\.\/(?!en-gb-)[\w-]+\.js$/, contextRegExp: /@univerjs[\\/]engine-render/ }),
    new BannerPlugin({ banner: "#!/usr/bin/env node", raw: true, entryOnly: true }),
    new Licences({ file: "licences.txt" }),
  ],
  optimization: { minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })] },
  performance: { hints: false },
};
