"use strict";
// node -r ./src/tooling/typescriptHook.js file.ts: runs TypeScript with no further tool and no type check.
const fs = require("node:fs");
const Module = require("node:module");
const { transpile } = require("./transpile");

Module._extensions[".ts"] = (module, file) => module._compile(transpile(fs.readFileSync(file, "utf8"), file), file);
