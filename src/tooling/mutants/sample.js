"use strict";
// Which mutants a run looks at: of each room the same number, drawn by a seed, so that anyone can repeat the run.
const { createHash } = require("node:crypto");

/** Rooms that stand inside another room's folder; every other room is the first folder below src. */
const INNER_ROOMS = ["workbook/excel", "workbook/grid"];

/** Where a string literal is a sentence that a test should hold; elsewhere most are help text and would crowd out the rest. */
const IN_WORDS = /^src\/(problems\/|(.*\/)?words\/)/;

/** @param {string} file such as "src/drying/fit.ts" */
const roomOf = (file) => {
  const [, first, second] = file.split("/");
  return INNER_ROOMS.includes(`${first}/${second}`) ? `${first}/${second}` : first;
};

const countsStrings = (file) => IN_WORDS.test(file);

/**
 * Up to `size` mutants of each room. They are ranked by a digest of seed, mutator and code, not by their place, so an edit
 * elsewhere, or moving a file within its room, leaves the rest of the sample as it was.
 * @template {{ file: string, mutator: string, original: string, replacement: string }} Mutant
 * @param {readonly Mutant[]} mutants @param {{ seed: number, size: number }} draw @returns {Mutant[]}
 */
const sampleByRoom = (mutants, { seed, size }) => {
  const seen = new Map();
  const rooms = new Map();
  for (const mutant of mutants) {
    const room = roomOf(mutant.file);
    const code = [seed, room, mutant.mutator, mutant.original, mutant.replacement].join("\0");
    const occurrence = seen.get(code) ?? 0;
    seen.set(code, occurrence + 1);
    const rank = createHash("sha256").update(`${code}\0${occurrence}`).digest("hex");
    rooms.set(room, [...(rooms.get(room) ?? []), { mutant, rank }]);
  }
  const byRank = (a, b) => (a.rank < b.rank ? -1 : 1);
  const names = [...rooms.keys()].sort();
  return names.flatMap((room) =>
    rooms
      .get(room)
      .sort(byRank)
      .slice(0, size)
      .map(({ mutant }) => mutant),
  );
};

module.exports = { roomOf, countsStrings, sampleByRoom };
