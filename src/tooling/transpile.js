"use strict";
// One TypeScript-to-CommonJS step for jest and for scripts that Node runs directly. Types are checked by tsc alone.
const ts = require("typescript");

const compilerOptions = {
  module: ts.ModuleKind.CommonJS,
  // As the pane is built; functions.js, which is built lower, is tested as built (tests/functions/builtFunctions.test.ts).
  target: ts.ScriptTarget.ES2020,
  esModuleInterop: true,
  isolatedModules: true,
  inlineSourceMap: true,
  inlineSources: true,
};

exports.transpile = (source, fileName) => ts.transpileModule(source, { fileName, compilerOptions }).outputText;
exports.version = `${ts.version} ${JSON.stringify(compilerOptions)}`;
