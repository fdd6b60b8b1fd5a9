"use strict";
// As much of Node's process as the file library and its streams ask for, in a page.
module.exports = { browser: true, env: {}, version: "", nextTick: (run, ...given) => queueMicrotask(() => run(...given)) };
