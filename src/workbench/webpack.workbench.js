"use strict";
// The local workbook's own build. Nothing of it enters the add-in; its functions.js comes from src/tooling/functionsBuild.js.
const path = require("node:path");
const { DefinePlugin, IgnorePlugin } = require("webpack");
const CopyWebpackPlugin = require("copy-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const TerserPlugin = require("terser-webpack-plugin");
const CatalogueAssets = require("../tooling/CatalogueAssets");
const files = require("../tooling/fileLibraryBuild");
const GuideAssets = require("../tooling/hosting/GuideAssets");
const HashedPages = require("../tooling/hosting/HashedPages");
const Licences = require("../tooling/hosting/Licences");
const OfflineWorker = require("../tooling/hosting/OfflineWorker");
const { version } = require("../../package.json");

const SRC = path.resolve(__dirname, "..");

const GRID_STYLES = ["core", "data-validation"].map((preset) => `@univerjs/preset-sheets-${preset}/lib/index.css`);

module.exports = {
  name: "workbench",
  target: ["web", "es2022"],
  devtool: false,
  context: path.resolve(SRC, ".."),
  entry: {
    workbench: [...GRID_STYLES, "./src/workbench/workbench.css", "./src/workbench/paper/paper.css", "./src/workbench/page.ts"],
    pane: ["./src/pane/pane.css", "./src/workbench/pane.ts"],
  },
  output: {
    path: path.resolve(SRC, "../dist/workbench"),
    filename: "hashed/[name].[contenthash].js",
    chunkFilename: "hashed/[name].[contenthash].js",
    publicPath: "auto",
    clean: { keep: /^(functions\.js|licences\/functions\.txt)$/ },
  },
  resolve: {
    extensions: [".ts", ".js"],
    alias: {
      ...files.alias,
      ...Object.fromEntries(["cjk-regex$", "opentype.js$", "franc-min$"].map((unused) => [unused, path.join(__dirname, "grid/engineStandIns.ts")])),
    },
    fallback: files.fallback,
  },
  module: {
    rules: [
      {
        test: /\.ts$/,
        exclude: /node_modules/,
        use: { loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
      },
      ...files.rules,
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
    ],
  },
  plugins: [
    new DefinePlugin({ RETORT_VERSION: JSON.stringify(version) }),
    // How other languages than English hyphenate: asked for by the language of a text, which grid/engineStandIns.ts leaves undetermined.
    new IgnorePlugin({ resourceRegExp: /^\.\/(?!en-gb-)[\w-]+\.js$/, contextRegExp: /@univerjs[\\/]engine-render/ }),
    new MiniCssExtractPlugin({ filename: "hashed/[name].[contenthash].css", chunkFilename: "hashed/[name].[contenthash].css" }),
    new HashedPages(),
    // Addresses without a host, so that the pages are found wherever the folder is served.
    new CatalogueAssets({ address: ".", help: true }),
    new GuideAssets({ folder: "/", pages: ["", "index.html", "pane.html", OfflineWorker.FILE] }),
    new OfflineWorker(),
    new Licences({ file: "licences/workbench.txt" }),
    new CopyWebpackPlugin({
      patterns: [
        { from: "src/workbench/*.html", to: "[name][ext]", info: { minimized: true } },
        { from: "src/help/help.css", to: "help/help.css" },
        { from: "LICENSE", to: "licences/retort.txt", toType: "file" },
      ],
    }),
  ],
  // The grid's engine is 7 MB: the default minifier takes six times as long as this one for 3 % less.
  // What is fetched together is one file.
  optimization: { splitChunks: false, minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })] },
  performance: { hints: false },
};
