"use strict";
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");
const { DefinePlugin } = require("webpack");
const CopyWebpackPlugin = require("copy-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const CatalogueAssets = require("./src/tooling/CatalogueAssets");
const functionsBuild = require("./src/tooling/functionsBuild");
const workbench = require("./src/workbench/webpack.workbench");
const { version } = require("./package.json");

const ADDIN = path.resolve(__dirname, "dist/addin");
// Written by a build of its own.
const FUNCTIONS_JS = /^functions\.js$/;

// What manifest.xml holds in the repository; ADDIN_URL replaces it in the built copy.
const PLACEHOLDER_ADDRESS = "https://localhost:3000";
const OFFICE_CDN = "https://appsforoffice.microsoft.com";

// The files of @microsoft/office-js that Excel asks for on Windows, Mac, the web and in the functions page, English strings only.
const OFFICE_JS = path.join(path.dirname(require.resolve("@microsoft/office-js/package.json")), "dist");
const OFFICE_JS_FILES = [
  "office.js",
  "custom-functions-runtime.js",
  "o15apptofilemappingtable.js",
  "excel-web-16.00.js",
  "excel-win32-16.01.js",
  "excel-mac-16.00.js",
  "en-us/office_strings.js",
];

/** The https address the add-in will be served from, without a slash at its end. */
function servedFrom() {
  const address = (process.env.ADDIN_URL ?? PLACEHOLDER_ADDRESS).replace(/\/+$/, "");
  if (!/^https:\/\/[^\s"'<>&]+$/.test(address))
    throw new Error(`ADDIN_URL: "${address}" is not an https address. Give one such as https://example.org/retort.`);
  return address;
}

/** "cdn" (the default, as the vendor asks of public add-ins) or "local" (closed networks: the library is copied beside the add-in). */
function officeLibrary() {
  const from = process.env.OFFICE_JS ?? "cdn";
  if (from !== "cdn" && from !== "local") throw new Error(`OFFICE_JS: "${from}" is not one of "cdn", "local".`);
  return from === "local"
    ? { local: true, folder: "office", origin: "" }
    : { local: false, folder: `${OFFICE_CDN}/lib/1/hosted`, origin: ` ${OFFICE_CDN}` };
}

/** The certificate that the sideloading tool made and this system trusts, where there is one; else a self-signed one. */
function httpsServer() {
  const folder = path.join(os.homedir(), ".office-addin-dev-certs");
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((file) => path.join(folder, file));
  if (![ca, cert, key].every((file) => fs.existsSync(file))) return { type: "https" };
  return { type: "https", options: { ca: fs.readFileSync(ca), cert: fs.readFileSync(cert), key: fs.readFileSync(key) } };
}

function addin(mode) {
  const address = servedFrom();
  const office = officeLibrary();
  const filledIn = (page) => page.toString().replaceAll("%OFFICE_LIBRARY%", office.folder).replaceAll("%OFFICE_ORIGIN%", office.origin);
  // Left as it is: the vendor's licence allows only the original files, and minifying them again costs 20 s.
  const officeFiles = OFFICE_JS_FILES.map((file) => ({ from: path.join(OFFICE_JS, file), to: `office/${file}`, info: { minimized: true } }));
  return {
    name: "addin",
    mode,
    target: ["web", "es2020"],
    devtool: mode === "development" ? "source-map" : false,
    entry: { taskpane: ["./src/pane/pane.css", "./src/addin/pane.ts"] },
    output: { path: ADDIN, filename: "[name].js", chunkFilename: "chunks/[name].js", clean: { keep: FUNCTIONS_JS } },
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          exclude: /node_modules/,
          use: { loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false, target: "ES2020" } } },
        },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    plugins: [
      new DefinePlugin({ RETORT_VERSION: JSON.stringify(version) }),
      new MiniCssExtractPlugin({ filename: "[name].css", chunkFilename: "chunks/[name].css" }),
      new CatalogueAssets({ address, help: true }),
      new CopyWebpackPlugin({
        patterns: [
          { from: "src/addin/*.html", to: "[name][ext]", transform: filledIn, info: { minimized: true } },
          { from: "src/assets/*.png", to: "assets/[name][ext]" },
          { from: "src/help/help.css", to: "help/help.css" },
          { from: "manifest.xml", to: "manifest.xml", transform: (xml) => xml.toString().replaceAll(PLACEHOLDER_ADDRESS, address) },
          { from: "LICENSE", to: "licences/retort.txt", toType: "file" },
          { from: "node_modules/uplot/LICENSE", to: "licences/uplot.txt", toType: "file" },
          { from: "node_modules/@borgar/fx/LICENSE", to: "licences/fx.txt", toType: "file" },
          { from: "node_modules/core-js/LICENSE", to: "licences/core-js.txt", toType: "file" },
          ...(office.local ? officeFiles : []),
        ],
      }),
    ],
    performance: { hints: false },
    devServer: {
      host: "localhost",
      port: 3000,
      server: httpsServer(),
      headers: { "Access-Control-Allow-Origin": "*" },
      static: false,
      hot: false,
      liveReload: false,
      client: false,
      webSocketServer: false,
    },
  };
}

module.exports = (_env, { mode = "production" }) => [functionsBuild("functions", ADDIN, workbench.output.path, mode), addin(mode), workbench];
