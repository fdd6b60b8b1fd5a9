"use strict";
// The local workbook's own build. Nothing of it enters the add-in; its functions.js comes from src/tooling/functionsBuild.js.
const path = require("node:path");
const { DefinePlugin, IgnorePlugin } = require("webpack");
const CopyWebpackPlugin = require("copy-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const TerserPlugin = require("terser-webpack-plugin");
const CatalogueAssets = require("../tooling/CatalogueAssets");
const GuideAssets = require("../tooling/hosting/GuideAssets");
const HashedPages = require("../tooling/hosting/HashedPages");
const Licences = require("../tooling/hosting/Licences");
const OfflineWorker = require("../tooling/hosting/OfflineWorker");
const { version } = require("../../package.json");

const EXCELJS = path.dirname(require.resolve("exceljs/package.json"));
const inExceljs = (name) => require.resolve(name, { paths: [EXCELJS] });

/** The library's own modules; the file it offers as a whole holds several of them twice, as text. */
const ZIP = path.join(path.dirname(require.resolve("@zip.js/zip.js/package.json")), "lib");
const ZIP_LOCKS = ["aes-crypto-stream.js", "zip-crypto-stream.js"].map((file) => path.join(ZIP, "core/streams", file));

const SRC = path.resolve(__dirname, "..");

/** The file library and its streams. */
const TAKE_NODE_FOR_GRANTED = /[\\/](?:exceljs[\\/]lib|jszip[\\/]lib|readable-stream)[\\/]/;

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
      // From sources: their own builds hold packages whose licences could not be passed on, most of them for passwords, which are not used.
      exceljs$: path.join(EXCELJS, "lib/exceljs.bare.js"),
      jszip$: inExceljs("jszip/lib/index.js"),
      // Text files with commas are not asked for either.
      "fast-csv$": false,
      "@zip.js/zip.js$": path.join(ZIP, "zip-core-custom.js"),
      // Locked archives are refused.
      ...Object.fromEntries(ZIP_LOCKS.map((file) => [file, false])),
      ...Object.fromEntries(["cjk-regex$", "opentype.js$", "franc-min$"].map((unused) => [unused, path.join(__dirname, "grid/engineStandIns.ts")])),
    },
    fallback: {
      // What stands in for Node's own modules: the packages that the file library's streams bring themselves.
      buffer: inExceljs("buffer/"),
      events: inExceljs("events/"),
      stream: inExceljs("readable-stream"),
      // Files on a disk and passwords: neither is asked for.
      fs: false,
      crypto: false,
    },
  },
  module: {
    rules: [
      {
        test: /\.ts$/,
        exclude: /node_modules/,
        use: { loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
      },
      {
        test: (file) => TAKE_NODE_FOR_GRANTED.test(file) && file.endsWith(".js"),
        // Asks for its Buffer itself.
        exclude: /browser-buffer-encode\.js$/,
        use: path.join(__dirname, "xlsx/nodeNames.js"),
      },
      // It reads archives and no more: what writes them, and its workers, are left out.
      { test: (file) => file.startsWith(ZIP), sideEffects: false },
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
