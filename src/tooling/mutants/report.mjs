// What a mutation run found, as text.
import sample from "./sample.js";

const COLUMNS = ["room", "mutants", "sampled", "killed", "timed out", "survived", "killed %"];
const shortened = (code) => (code.length > 110 ? `${code.slice(0, 107)}...` : code);

const countOf = (fates, state) => fates.filter((fate) => fate.state === state).length;

function row(room, all, fates) {
  const [killed, timedOut, survived] = ["killed", "timed out", "survived"].map((state) => countOf(fates, state));
  const share = fates.length === 0 ? "" : ((100 * (killed + timedOut)) / fates.length).toFixed(0);
  return [room, all.length, fates.length, killed, timedOut, survived, share].map(String);
}

function table(rows) {
  const widths = COLUMNS.map((title, column) => Math.max(title.length, ...rows.map((cells) => cells[column].length)));
  const line = (cells) => `| ${cells.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]) : cell.padStart(widths[column]))).join(" | ")} |`;
  return [
    line(COLUMNS),
    `| ${widths.map((width, column) => "-".repeat(width - (column > 0 ? 1 : 0)) + (column > 0 ? ":" : "")).join(" | ")} |`,
    ...rows.map(line),
  ];
}

function survivors(fates) {
  const left = fates.filter(({ state }) => state === "survived").sort((a, b) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1));
  return left.map(
    ({ file, line, mutator, original, replacement, note }) =>
      `${file}:${line} ${mutator} (${note})\n    ${shortened(original)}\n  → ${shortened(replacement)}`,
  );
}

/** The table by room, what it leaves out, and every survivor with its place, the code and what it was changed to. */
export function report(mutants, fates, { size, seed, patience }) {
  const rooms = [...new Set(mutants.map(({ file }) => sample.roomOf(file)))].sort();
  const inRoom = (list, room) => list.filter(({ file }) => sample.roomOf(file) === room);
  const rows = [...rooms.map((room) => row(room, inRoom(mutants, room), inRoom(fates, room))), row("all", mutants, fates)];
  return [
    ...table(rows),
    "",
    `Up to ${size} mutants of each room, drawn with seed ${seed}. "Timed out" counts as killed: the change made an endless loop.`,
    "String literals are changed only in src/problems and in folders called words: elsewhere most of them are help text.",
    "Numbers are changed by one step in their last digit that is not 0, at most the twelfth. Browser tests and tests of built files are left out,",
    "so the pages' rooms (addin, pane, workbench) look worse than they are.",
    `Of the tests that run a survivor, those that fit into ${patience} s of processor time were run, the nearest first; --patience gives it longer.`,
    "",
    "Survivors:",
    ...survivors(fates),
  ].join("\n");
}
