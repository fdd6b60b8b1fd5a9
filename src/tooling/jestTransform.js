"use strict";
const { createHash } = require("node:crypto");
const { transpile, version } = require("./transpile");

module.exports = {
  getCacheKey: (source, file, { instrument }) => createHash("sha256").update(`${version}\0${file}\0${instrument}\0${source}`).digest("hex"),
  process: (source, file) => ({ code: transpile(source, file) }),
};
