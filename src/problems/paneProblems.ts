import { sentenceAbout } from "./ArgumentProblem";
import { plainNumber } from "./quoted";

export const unforeseenInPane = (seen: string): string => `That did not work: ${seen}. Try again; if it stays, reload the pane.`;

export const leftUnfinished = (name: string): string =>
  `The sheet "${name}" was begun and never finished, because the workbook stopped answering. Look at it first: whatever was typed there goes with it.`;

export const askBeforeRemoving = (name: string): string =>
  `Not removed yet: something may stand on "${name}" that is yours. Look through the sheet, move what is yours, then press the button once more.`;

export const unfinishedRemoved = (name: string): string => `"${name}" is removed.`;

export const unfinishedGone = (name: string): string => `"${name}" was left alone: it is gone, or it has been finished meanwhile.`;

export const notANumberInForm = (label: string, typed: string): string =>
  sentenceAbout(label, `"${typed}" is not a number`, "Type digits, such as 30 or 0.01.");

/** For "1,440", which some read as 1440 and others as 1.44. */
export const ambiguousInForm = (label: string, typed: string): string =>
  sentenceAbout(label, `"${typed}" can be read in two ways`, `Type ${typed.replace(",", "")} or ${typed.replace(",", ".")}.`);

export const blankInForm = (label: string, example: string): string => sentenceAbout(label, "nothing here", `Type a value such as ${example}.`);

export const kilnTemperatureMissing = (label: string): string =>
  sentenceAbout(label, "nothing here, though a heating rate or a hold is given", "Give the temperature or clear them.");

export const outOfBoundsInForm = (label: string, value: number, atLeast: number, atMost: number, unit: string): string =>
  sentenceAbout(
    label,
    `${plainNumber(value)} ${unit} is not between ${plainNumber(atLeast)} and ${plainNumber(atMost)} ${unit}`,
    "Give a number in between.",
  );

/** Words around the explanation of a run sheet's cell. */
export const runCellWords = {
  waitsFor: "Not yet. It waits for:",
  looksAt: "Looks at",
  found: "Found",
  remedy: "What to do",
  plusMinus: "What the ± covers",
  inputs: "Inputs",
  arithmetic: "Arithmetic",
  decides: "How the sheet decides",
  source: "Source",
  yes: "yes",
  no: "no",
  formula: "The formula",
  more: (count: number): string => `and ${count} more`,
  /** In a breath, for the live region. */
  summary: (cell: string, name: string, result: string, waitsFor: string, notes: readonly string[]): string => {
    const says = waitsFor !== "" ? `not yet: ${waitsFor}` : result === "" ? "shows nothing" : result.replace(/\.$/, "");
    return [`${cell}, ${name}: ${says}.`, ...notes].join(" ");
  },
} as const;

export const heatingRateMissingInForm = (label: string): string =>
  sentenceAbout(label, "nothing here, though a kiln temperature is given", "Give the rate.");

const FIGURES_CONVERTED = 3;

/** A bare number that is more likely of another unit. @param converted the number in the box's own unit if it is of the other */
export const unitOrUnit = (label: string, value: number, own: string, other: string, converted: number): string =>
  sentenceAbout(
    label,
    `${plainNumber(value)} may be ${plainNumber(value)} ${own} or ${plainNumber(value)} ${other}`,
    `Type ${plainNumber(converted, FIGURES_CONVERTED)}, or ${plainNumber(value)} ${own} with its unit.`,
  );

const IN_PERCENT = 100;

/** A number in a box for percent that is so small that a fraction may be meant: 0.71 for 71 %. */
export const percentOrFraction = (label: string, value: number): string =>
  sentenceAbout(
    label,
    `${plainNumber(value)} may be ${plainNumber(value)} % or ${plainNumber(IN_PERCENT * value)} %`,
    `Type ${plainNumber(IN_PERCENT * value)}, or ${plainNumber(value)} % with its sign.`,
  );

const MINUTES_PER_HOUR = 60;
const FIGURES = 3;

/** A number in a box for hours that is so large that minutes may be meant: 180 for 3 h. */
export const hoursOrMinutes = (label: string, value: number): string =>
  sentenceAbout(
    label,
    `${plainNumber(value)} may be ${plainNumber(value)} min or ${plainNumber(value)} h`,
    `Type ${plainNumber(value / MINUTES_PER_HOUR, FIGURES)}, or ${plainNumber(value)} h with its unit.`,
  );

/** Weighings planned so far apart that another unit may be meant. */
export const farBetween = (label: string, minutes: number): string =>
  `? ${sentenceAbout(label, `${plainNumber(minutes)} min are ${plainNumber(minutes / MINUTES_PER_HOUR, FIGURES)} h between two weighings`, "Type minutes, fewer if seconds were meant.")}`;

/** Weighings planned farther apart than the drying takes. */
export const longerThanDrying = (label: string, minutes: number, drying: string, hours: number): string =>
  `? ${sentenceAbout(label, `${plainNumber(minutes)} min are longer than the ${plainNumber(hours, FIGURES)} h of ${drying}`, "Look at both.")}`;

/** @param why what clockProblems says of what was typed */
export const notAClockInForm = (label: string, why: string): string => `${label}: ${why}`;

/** A carried plan whose entries no longer serve stops the sheet from being made without it. */
export const planInTheWay = (problem: string): string => `Plan a run: ${problem} Mend it there, or press "Leave the plan out".`;

/** Behind what was inserted, where something was typed into the plan and neither carried nor left out. */
export const planNotCarried = ' It holds nothing of the plan typed above. To have the plan on it, press "Carry into the form" and insert again.';
