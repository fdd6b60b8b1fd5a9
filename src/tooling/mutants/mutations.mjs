// The mutants of the sources, by StrykerJS's instrumenter, and sources that hold a chosen few of them behind a switch.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import numbers from "./numberMutator.js";
import sample from "./sample.js";

// The list of mutators is not among the package's exports, and takes no plug-ins; the version is pinned.
const MUTATORS = path.join(path.dirname(createRequire(import.meta.url).resolve("@stryker-mutator/instrumenter")), "mutators/mutate.js");
const { allMutators } = await import(pathToFileURL(MUTATORS));
const MUTATORS_OF_THE_TOOL = [...allMutators];

const SILENT = { debug() {}, info() {}, isDebugEnabled: () => false };
const OPTIONS = { ignorers: [], excludedMutations: [], plugins: null, noHeader: false };

/** The instrumenter passes over the inside of a cast, and tables of constants are cast: blanks keep every position. */
const withoutConstCasts = (text) => text.replaceAll(/ as const\b/g, (cast) => " ".repeat(cast.length));

const offsetsOf = (text) => [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];

/** @param {(file: string, mutator: string, node: object, replacement: object) => boolean} keep decides which mutants are placed */
async function instrumented(root, files, keep) {
  const kept = [...MUTATORS_OF_THE_TOOL, numbers.numberMutator].map((mutator) => ({
    name: mutator.name,
    *mutate(nodePath) {
      for (const replacement of mutator.mutate(nodePath)) {
        if (keep(nodePath.hub.file.opts.filename, mutator.name, nodePath.node, replacement)) yield replacement;
      }
    },
  }));
  allMutators.splice(0, allMutators.length, ...kept);
  const read = files.map((file) => ({ name: file, mutate: true, content: withoutConstCasts(readFileSync(path.join(root, file), "utf8")) }));
  return { read, ...(await new Instrumenter(SILENT).instrument(read, OPTIONS)) };
}

const placeOf = (file, mutator, { start, end }) => [file, mutator, start.line, start.column, end.line, end.column].join(":");
const oneLine = (code) => code.replaceAll(/\s+/g, " ");

/** Every mutant of the files, string literals only where words are held. @param {string[]} files below root, with forward slashes */
export async function everyMutant(root, files) {
  const keep = (file, mutator) => mutator !== "StringLiteral" || sample.countsStrings(file);
  const { read, mutants } = await instrumented(root, files, keep);
  const sources = new Map(read.map(({ name, content }) => [name, { content, offsets: offsetsOf(content) }]));
  return mutants.map(({ fileName, mutatorName, location, replacement }) => {
    const { content, offsets } = sources.get(fileName);
    // The instrumenter counts lines from 0.
    const at = ({ line, column }) => offsets[line] + column;
    const original = oneLine(content.slice(at(location.start), at(location.end)));
    return { file: fileName, line: location.start.line + 1, mutator: mutatorName, original, replacement: oneLine(replacement), location };
  });
}

/** The chosen mutants with their switches' ids, and the text of each file that holds them. */
export async function switchedSources(root, chosen) {
  const places = new Set(chosen.map(({ file, mutator, location }) => placeOf(file, mutator, location)));
  const babelPlace = (file, mutator, { start, end }) =>
    placeOf(file, mutator, { start: { ...start, line: start.line - 1 }, end: { ...end, line: end.line - 1 } });
  const keep = (file, mutator, node) => places.has(babelPlace(file, mutator, node.loc));
  const { files, mutants } = await instrumented(root, [...new Set(chosen.map(({ file }) => file))], keep);
  const ids = new Map(
    mutants.map((mutant) => [`${placeOf(mutant.fileName, mutant.mutatorName, mutant.location)}:${oneLine(mutant.replacement)}`, mutant.id]),
  );
  const withIds = chosen.map((mutant) => {
    const id = ids.get(`${placeOf(mutant.file, mutant.mutator, mutant.location)}:${mutant.replacement}`);
    if (id === undefined) throw new Error(`${mutant.file} changed while its mutants were made. Leave the sources alone until the run is over.`);
    return { ...mutant, id };
  });
  return { mutants: withIds, files: files.map(({ name, content }) => ({ file: name, text: content })) };
}
