"use strict";
// How the file library and the reader of archives are built into pages: from their sources, without what is not used.
const path = require("node:path");

const EXCELJS = path.dirname(require.resolve("exceljs/package.json"));
const inExceljs = (name) => require.resolve(name, { paths: [EXCELJS] });

/** The library's own modules; the file it offers as a whole holds several of them twice, as text. */
const ZIP = path.join(path.dirname(require.resolve("@zip.js/zip.js/package.json")), "lib");
const ZIP_LOCKS = ["aes-crypto-stream.js", "zip-crypto-stream.js"].map((file) => path.join(ZIP, "core/streams", file));

/** The file library and its streams. */
const TAKE_NODE_FOR_GRANTED = /[\\/](?:exceljs[\\/]lib|jszip[\\/]lib|readable-stream)[\\/]/;

module.exports = {
  alias: {
    // From sources: their own builds hold packages whose licences could not be passed on, most of them for passwords, which are not used.
    exceljs$: path.join(EXCELJS, "lib/exceljs.bare.js"),
    jszip$: inExceljs("jszip/lib/index.js"),
    // Text files with commas are not asked for either.
    "fast-csv$": false,
    "@zip.js/zip.js$": path.join(ZIP, "zip-core-custom.js"),
    // Locked archives are refused.
    ...Object.fromEntries(ZIP_LOCKS.map((file) => [file, false])),
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
  rules: [
    {
      test: (file) => TAKE_NODE_FOR_GRANTED.test(file) && file.endsWith(".js"),
      // Asks for its Buffer itself.
      exclude: /browser-buffer-encode\.js$/,
      use: path.resolve(__dirname, "../workbench/xlsx/nodeNames.js"),
    },
    // It reads archives and no more: what writes them, and its workers, are left out.
    { test: (file) => file.startsWith(ZIP), sideEffects: false },
  ],
};
