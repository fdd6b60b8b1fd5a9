"use strict";
// A webpack loader: the file library and its streams take Node's Buffer and process for granted. They get them, and no other package does.
const path = require("node:path");

const PAGE_PROCESS = JSON.stringify(path.join(__dirname, "pageProcess.ts"));

module.exports = (source) => `var process = require(${PAGE_PROCESS}).process, Buffer = require("buffer").Buffer;${source}`;
