import { CONSTANCY_CRITERIA } from "../../drying/constantWeight/constancyCriteria";
import { all, any, anyWhere, product, unlessError, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { cellNumbered, lastCellWhere } from "../formulas/cellsNamed";
import { FIRST_DATE } from "../formulas/clock";
import { stripCell } from "../formulas/strip";
import { isTruthHeld, truthOf } from "../formulas/truths";
import { areWrong, firesBoxes, numberOfWrong, type Least } from "../formulas/wrongBoxes";
import { block } from "../formulas/weighings";
import { inDegrees } from "../options/degrees";
import { optionBounds } from "../options/optionBounds";
import { CLOCK } from "../sheet/Columns";
import type { CheckName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { degreeWords } from "../words/BoxWords";
import { checkWords } from "../words/checkWords";
import { openFireWords } from "../words/openFireWords";
import { settingWords } from "../words/settingWords";
import { weighingWords } from "../words/weighingWords";
import { step, type Step } from "./Check";
import { stripsOf } from "./zerosCheck";

const { wanted: words, rows, times, caught: caughtWords } = checkWords;
const { boxes: settingsWords } = settingWords;

/**
 * What each check tells first of the boxes that it reads: one that wants a number and holds none that can be, by name and with what to type.
 * Entry rules refuse such entries, and what is pasted passes them.
 */
export const BOXES_FIRST: Readonly<Partial<Record<CheckName, (sheet: RunSheet) => readonly Step[]>>> = {
  // The first of the checks, so that it is the one that the head tells.
  vessel: (sheet) => [step(isTruthHeld(sheet), words.truth(cellNumbered(truthOf(sheet))))],
  times: ofTimes,
  rows: ofWeights,
  dryness: (sheet) => {
    const { readability, interval, limit } = sheet.settings;
    return [
      numberWanted([readability], "above 0", settingsWords.readability.refusal),
      numberWanted([interval], "above 0", settingsWords.interval.refusal),
      ...unknownCriterion(sheet),
      numberWanted([limit], "0", settingsWords.limit.refusal),
    ];
  },
  opened: ({ working, settings: { closed } }) => [
    step(is(working.wrongHeld, ">", 0), words.noNumber(cellNumbered(working.wrongHeld), words.least["0"], words.held)),
    numberWanted([closed], "0", settingsWords.closed.refusal),
  ],
  rising: (sheet) => [ofTemperatures(sheet)],
  material: (sheet) => {
    const { degrees } = sheet.options;
    const { refusal } = degreeWords("", "", degrees, inDegrees(optionBounds.oven, degrees));
    return [numberWanted([sheet.settings.oven], "0", refusal), ...(sheet.fired.length === 0 ? [] : [ofTemperatures(sheet)])];
  },
  caught: ofCaught,
  agree: ({ settings: { methodScatter } }) => [numberWanted([methodScatter], "0", settingsWords.methodScatter.refusal)],
  fine: ({ settings: { repeatability, wanted, planned }, options }) => [
    numberWanted([repeatability], "0", settingsWords.repeatability.refusal),
    numberWanted([wanted], "above 0", settingsWords.wanted.refusal),
    ...(options.plan === undefined ? [] : [numberWanted([planned], "0", settingsWords.planned.refusal)]),
  ],
  analysis: ({ composition }) =>
    composition === undefined
      ? []
      : [
          numberWanted([range(composition.carbon, composition.sulfur)], "0", words.analysis),
          numberWanted([composition.exactness], "0", openFireWords.exactness.refusal),
        ],
  // Pan zeros and temperatures at the balance may lie below 0.
  zeros: (sheet) => [
    numberWanted(
      stripsOf(sheet).map(({ from, to }) => range(fixed(stripCell(from, "before")), fixed(stripCell(to, "after")))),
      "any",
      words.zero,
    ),
  ],
  // No temperature is asked for beside the empty vessel.
  warmth: ({ rows: { drying } }) => {
    const from = drying.strip?.first ?? 0;
    const boxes = range(fixed(stripCell(from, "room")), fixed(stripCell(from + drying.last - drying.first, "warmth")));
    return [numberWanted([boxes], "any", words.degrees)];
  },
};

/** Names the last of some boxes that holds no such number. @param remedy what to type */
export function numberWanted(boxes: readonly (Cell | Range)[], least: Least, remedy: string): Step {
  const [only, second] = boxes;
  const at = only?.kind === "cell" && second === undefined ? nameOf(only) : cellNumbered(numberOfWrong(boxes, least));
  return step(areWrong(boxes, least), words.noNumber(at, words.least[least], remedy));
}

function ofTimes({ working, setup, drying, options }: RunSheet): Step[] {
  const { first, total } = drying.rows;
  const minutes = range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)));
  const isText = fn("ISTEXT", minutes);
  const start = cell(first, CLOCK);
  const isDated = all(is(fn("COUNT", setup.date, start), "=", 2), is(fn("N", start), ">=", FIRST_DATE));
  const isOtherDay = all(isDated, is(is(fn("INT", fn("N", start)), "=", fn("INT", fn("N", setup.date))), "=", false));
  return [
    step(is(working.wrongClock, ">", 0), times.noTime(cellNumbered(working.wrongClock))),
    ...(options.timing === "minutes"
      ? [step(anyWhere(isText), times.minutesAsText(lastCellWhere(isText, minutes))), numberWanted([minutes], "0", words.minutes)]
      : []),
    numberWanted([setup.date], "0", words.date),
    step(unlessError(all(is(fn("COUNT", setup.date), "=", 1), is(fn("N", setup.date), "<", FIRST_DATE))), times.dateOld(nameOf(setup.date))),
    ...(options.timing === "minutes" ? [] : [step(unlessError(isOtherDay), times.dateOther(nameOf(setup.date), nameOf(start)))]),
  ];
}

/** A weight that is an error or a text has its own sentence; on a tared balance an empty vessel weighed again may read below 0. */
function ofWeights(sheet: RunSheet): Step[] {
  const { tables, end, across, columns, options } = sheet;
  const blocks = tables.map((table) => block(sheet, table));
  const vessels = across((sample) => fixed(columns.box(sheet.rows.drying.vessel, sample)));
  const again = end === undefined ? [] : [across(end.vessel)];
  const { tared } = weighingWords;
  const isOther = product(reckon(1, "-", fn("ISNUMBER", vessels)), reckon(1, "-", fn("ISBLANK", vessels)), reckon(1, "-", is(vessels, "=", tared)));
  const areOther = is(reckon(fn("COUNTA", vessels), "-", fn("COUNTIF", vessels, tared)), ">", fn("COUNT", vessels));
  const vessel = options.replicates === 1 ? nameOf(vessels.from) : lastCellWhere(isOther, vessels);
  return [
    ...[...blocks, vessels, ...again].map((of) => step(anyWhere(fn("ISERROR", of)), rows.error(lastCellWhere(fn("ISERROR", of), of)))),
    ...[...blocks, ...again].map((of) => step(anyWhere(fn("ISTEXT", of)), rows.isText(lastCellWhere(fn("ISTEXT", of), of)))),
    step(areOther, words.noNumber(vessel, words.least["0"], words.vessel)),
    step(is(fn("MIN", vessels), "<", 0), words.noNumber(lastCellWhere(is(vessels, "<", 0), vessels), words.least["0"], words.vessel)),
    numberWanted(blocks, "0", words.weight),
    ...(end === undefined ? [] : [numberWanted(again, "any", words.weight)]),
  ];
}

/** The criterion is none of the list, or an error. */
function unknownCriterion({ settings: { criterion } }: RunSheet): Step[] {
  const isKnown = any(...CONSTANCY_CRITERIA.map((name) => is(criterion, "=", name)));
  const isGiven: Condition = is(fn("COUNTA", criterion), ">", 0);
  return [step(all(isGiven, is(unlessError(isKnown), "=", false)), checkWords.dryness.unknownCriterion(nameOf(criterion)))];
}

const ofTemperatures = ({ fired }: RunSheet): Step =>
  numberWanted(
    fired.map((table) => firesBoxes(table, "set", "measured")),
    "0",
    words.fire,
  );

function ofCaught({ caught, options }: RunSheet): Step[] {
  if (caught === undefined) return [];
  const { parts } = caught;
  const blockOf = (at: (part: number, sample: number) => Cell): Range => range(at(parts[0] ?? 0, 1), at(parts.at(-1) ?? 0, options.replicates));
  const every = [blockOf(caught.before), blockOf(caught.after), range(caught.box("gas", 1), caught.box("known", options.replicates))];
  const isText = (of: Range): Expression => fn("ISTEXT", of);
  return [
    ...every.map((of) => step(anyWhere(isText(of)), caughtWords.isText(lastCellWhere(isText(of), of)))),
    numberWanted(every, "0", words.gramsOrPercent),
  ];
}
