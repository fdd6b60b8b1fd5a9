"use strict";
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");
const { DefinePlugin } = require("webpack");
const CopyWebpackPlugin = require("copy-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const TerserPlugin = require("terser-webpack-plugin");
const CatalogueAssets = require("./src/tooling/CatalogueAssets");
const command = require("./src/tooling/commandBuild");
const fileLibrary = require("./src/tooling/fileLibraryBuild");
const functionsBuild = require("./src/tooling/functionsBuild");
const GuideAssets = require("./src/tooling/hosting/GuideAssets");
const HashedPages = require("./src/tooling/hosting/HashedPages");
const Licences = require("./src/tooling/hosting/Licences");
const { officeLibrary, OFFICE_FILES } = require("./src/tooling/officeLibrary");
const workbench = require("./src/workbench/webpack.workbench");
const { version } = require("./package.json");

const ADDIN = path.resolve(__dirname, "dist/addin");
// Written by a build of its own.
const FUNCTIONS_BUILD = /^(functions\.js|licences\/functions\.txt)$/;

// What manifest.xml holds in the repository; ADDIN_URL replaces it in the built copy.
const PLACEHOLDER_ADDRESS = "https://localhost:3000";
/** The https address the add-in will be served from, without a slash at its end. */
function servedFrom() {
  const address = (process.env.ADDIN_URL ?? PLACEHOLDER_ADDRESS).replace(/\/+$/, "");
  if (!/^https:\/\/[^\s"'<>&]+$/.test(address))
    throw new Error(`ADDIN_URL: "${address}" is not an https address. Give one such as https://example.org/retort.`);
  return address;
}

/** The certificate that the sideloading tool made and this system trusts, where there is one; else a self-signed one. */
function httpsServer() {
  const folder = path.join(os.homedir(), ".office-addin-dev-certs");
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((file) => path.join(folder, file));
  if (![ca, cert, key].every((file) => fs.existsSync(file))) return { type: "https" };
  return { type: "https", options: { ca: fs.readFileSync(ca), cert: fs.readFileSync(cert), key: fs.readFileSync(key) } };
}

/** The manifest for the address, without the repository's notes to whoever edits it. */
const builtManifest = (xml, address) => xml.replaceAll(/^[ \t]*<!--[^]*?-->\r?\n/gm, "").replaceAll(PLACEHOLDER_ADDRESS, address);

function addin(mode) {
  const address = servedFrom();
  const office = officeLibrary(process.env.OFFICE_JS ?? "cdn");
  const filledIn = (page) => page.toString().replaceAll("%OFFICE_LIBRARY%", office.folder).replaceAll("%OFFICE_ORIGIN%", office.origin);
  // Left as it is: the vendor's licence allows only the original files, and minifying them again costs 20 s.
  const officeFiles = office.files.map(({ file, name }) => ({
    from: path.join(OFFICE_FILES, file),
    to: `office/${name}`,
    info: { minimized: true },
  }));
  return {
    name: "addin",
    mode,
    target: ["web", "es2020"],
    devtool: mode === "development" ? "source-map" : false,
    entry: { taskpane: ["./src/pane/pane.css", "./src/addin/pane.ts"] },
    output: {
      path: ADDIN,
      // The files that the manifest does not name are named by their content, so that they can be kept for ever and are never mixed with older ones.
      filename: "hashed/[name].[contenthash].js",
      chunkFilename: "hashed/[name].[contenthash].js",
      clean: { keep: FUNCTIONS_BUILD },
    },
    resolve: { extensions: [".ts", ".js"], alias: fileLibrary.alias, fallback: fileLibrary.fallback },
    module: {
      rules: [
        {
          test: /\.ts$/,
          exclude: /node_modules/,
          use: { loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false, target: "ES2020" } } },
        },
        ...fileLibrary.rules,
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    plugins: [
      new DefinePlugin({ RETORT_VERSION: JSON.stringify(version) }),
      new MiniCssExtractPlugin({ filename: "hashed/[name].[contenthash].css", chunkFilename: "hashed/[name].[contenthash].css" }),
      new HashedPages(),
      new CatalogueAssets({ address, help: true }),
      new GuideAssets({ folder: new URL(address).pathname, pages: ["functions.html", "taskpane.html", "manifest.xml"] }),
      new Licences({ file: "licences/taskpane.txt" }),
      new CopyWebpackPlugin({
        patterns: [
          { from: "src/addin/*.html", to: "[name][ext]", transform: filledIn, info: { minimized: true } },
          { from: "src/assets/*.png", to: "assets/[name][ext]" },
          { from: "src/help/help.css", to: "help/help.css" },
          { from: "manifest.xml", to: "manifest.xml", transform: (xml) => builtManifest(xml.toString(), address) },
          { from: "LICENSE", to: "licences/retort.txt", toType: "file" },
          ...officeFiles,
        ],
      }),
    ],
    // Licence notices are gathered by Licences, not scattered beside each chunk.
    optimization: { minimizer: [new TerserPlugin({ extractComments: false })] },
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

function functions(mode) {
  const build = functionsBuild("functions", ADDIN, workbench.output.path, mode);
  return { ...build, plugins: [...build.plugins, new Licences({ file: "licences/functions.txt", alsoInto: workbench.output.path })] };
}

// One after the other: the local workbook's service worker is named by the content of functions.js too.
module.exports = (_env, { mode = "production" }) =>
  Object.assign([functions(mode), addin(mode), workbench, { ...command, mode }], { parallelism: 1 });
