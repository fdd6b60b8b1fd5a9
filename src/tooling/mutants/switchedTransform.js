"use strict";
// Hands jest the sources of a mutation run, from the folder that holds them; the sources on disk stay as they are.
const fs = require("node:fs");
const path = require("node:path");
const jestTransform = require("../jestTransform");

const switched = (source, file, { config, transformerConfig }) => {
  const copy = path.join(transformerConfig.folder, path.relative(config.rootDir, file));
  return fs.existsSync(copy) ? fs.readFileSync(copy, "utf8") : source;
};

module.exports = {
  getCacheKey: (source, file, options) => jestTransform.getCacheKey(switched(source, file, options), file, options),
  process: (source, file, options) => jestTransform.process(switched(source, file, options), file, options),
};
