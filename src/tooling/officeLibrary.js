"use strict";
// Where the two pages of the add-in take Microsoft's library from, and which of its files a closed network needs beside the add-in.
const { existsSync, readdirSync } = require("node:fs");
const path = require("node:path");

const OFFICE_CDN = "https://appsforoffice.microsoft.com";
const OFFICE_FILES = path.join(path.dirname(require.resolve("@microsoft/office-js/package.json")), "dist");

// office.js and custom-functions-runtime.js load one more of these, by the host that the page is opened in: the whole client library for the
// pane, its core for the functions page. The mapping table is for a page outside Excel. Those of iPad and Android know no custom functions.
const ASKED_FOR = [
  "office.js",
  "custom-functions-runtime.js",
  "o15apptofilemappingtable.js",
  ...["excel-web-16.00", "excel-win32-16.01", "excel-mac-16.00"].flatMap((host) => [`${host}.js`, `${host}-core.js`]),
];
const STRINGS = "office_strings.js";

// On a web host that it does not know, the library shows this page of its own in a frame. It asks for it by names with capitals, which the
// package has in small letters.
const TRUST_PAGE = ["AgaveErrorUX/index.html", "AgaveErrorUX/AgaveErrorUX.js", "AgaveErrorUX/style/AgaveErrorUX.css"];
const TRUST_IMAGES = "agaveerrorux/images";

/** Every file that is asked for as web, Windows and Mac, in whatever language Excel speaks: in the package, and by the name it is asked for. */
function askedFor() {
  const languages = readdirSync(OFFICE_FILES).filter((folder) => existsSync(path.join(OFFICE_FILES, folder, STRINGS)));
  const images = readdirSync(path.join(OFFICE_FILES, TRUST_IMAGES)).map((image) => `AgaveErrorUX/images/${image}`);
  return [
    ...[...ASKED_FOR, ...languages.map((language) => `${language}/${STRINGS}`)].map((name) => ({ file: name, name })),
    ...[...TRUST_PAGE, ...images].map((name) => ({ file: name.toLowerCase(), name })),
    { file: "../LICENSE.md", name: "LICENSE.md" },
  ];
}

/**
 * @param {string} from "cdn" (as the vendor asks of public add-ins) or "local" (closed networks: the library lies beside the add-in)
 * @returns what the pages hold for %OFFICE_LIBRARY% and, as a further source in their policy, %OFFICE_ORIGIN%; and the files to copy
 */
function officeLibrary(from) {
  if (from === "local") return { folder: "office", origin: "", files: askedFor() };
  if (from === "cdn") return { folder: `${OFFICE_CDN}/lib/1/hosted`, origin: ` ${OFFICE_CDN}`, files: [] };
  throw new Error(`OFFICE_JS: "${from}" is not one of "cdn", "local".`);
}

module.exports = { officeLibrary, OFFICE_FILES };
