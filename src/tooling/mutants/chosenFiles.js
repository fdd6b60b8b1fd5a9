"use strict";
// The sources a mutation run is to look at, and the tests that can notice a change in them.
const { execFileSync } = require("node:child_process");
const path = require("node:path");
const { roomOf } = require("./sample.js");

/**
 * The sources of the rooms and of the names given, all where none are.
 * @param {readonly string[]} all every source, such as "src/drying/fit.ts"
 * @param {{ room?: readonly string[], files?: readonly string[] }} given `files` from the root of the project
 * @returns {string[]} @throws for a file that is no source, and where nothing is left
 */
function chosenFiles(all, { room, files }) {
  const wanted = files?.map((file) => path.posix.normalize(file.replaceAll("\\", "/")));
  const strangers = wanted?.filter((file) => !all.includes(file)) ?? [];
  if (strangers.length > 0) throw new Error(`No such source: ${strangers.join(", ")}. Give the path from the root, such as ${all[0]}.`);
  const chosen = all.filter((file) => (room?.includes(roomOf(file)) ?? true) && (wanted?.includes(file) ?? true));
  if (chosen.length === 0) throw new Error(`There are no such sources. Rooms: ${[...new Set(all.map(roomOf))].join(", ")}.`);
  return chosen;
}

/**
 * The test files that import one of the sources, directly or by way of others, as jest itself resolves imports.
 * @param {string} root @param {readonly string[]} files from the root @returns {string[]} full paths
 */
function relatedTests(root, files) {
  const jest = path.join(path.dirname(require.resolve("jest/package.json")), "bin/jest.js");
  const given = [jest, "--listTests", "--json", "--findRelatedTests", ...files];
  return JSON.parse(execFileSync(process.execPath, given, { cwd: root, encoding: "utf8" }));
}

/** Where the cell functions are called as a host does: what these leave alone, hardly any test further off notices. */
const THROUGH_CELLS = ["tests/functions/", "tests/published/"];

/**
 * The test files by how soon they are tried: those of the sources' own rooms, those that call cell functions, the rest.
 * @param {string} root @param {readonly string[]} tests full paths @param {readonly string[]} files from the root @returns {string[][]}
 */
function stagesOf(root, tests, files) {
  const own = files.map((file) => `tests/${roomOf(file)}/`);
  const stageOf = (test) => {
    const name = path.relative(root, test).replaceAll("\\", "/");
    return [own, THROUGH_CELLS].findIndex((folders) => folders.some((folder) => name.startsWith(folder)));
  };
  return [0, 1, -1].map((stage) => tests.filter((test) => stageOf(test) === stage));
}

module.exports = { chosenFiles, relatedTests, stagesOf };
