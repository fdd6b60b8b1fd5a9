import { recalculated } from "./recalculated";
import type { SheetCells } from "../../../explanation/runSheet/RunCells";
import { workOut } from "../../../explanation/runSheet/workOut";
import { couldBeThousands } from "../readNumbers";
import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { cell, type Cell } from "../../../runsheet/expressions/Expression";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { decimalsOf } from "../../../runsheet/sheet/massFormats";
import { weighingWords } from "../../../runsheet/words/weighingWords";
import { readClock } from "./readClock";
import type { Step } from "./order/Step";

/** What an entry comes to in its cell, or why it is refused. */
export type Entry = { readonly content: number | string } | { readonly refused: string };

const THOUSANDTHS = 3;
const UNITS = /^(-?[\d.,]+) ?(g|mg|kg|%|°c|°f|c|f|min)$/i;

/** A reading as typed: a decimal comma is one, a unit is named, and what the entry rule of the box refuses is refused in its words. */
export function readEntry(cells: SheetCells, { at, kind, name }: Pick<Step, "at" | "kind" | "name">, typed: string, now: Date): Entry {
  const text = typed.trim();
  const rule = cells.ruleOver(at.row, at.column);
  if (kind === "clock") {
    if (text === "") return { refused: rule?.refusal ?? "" };
    const time = readClock(text, now);
    return "refused" in time ? time : judged(cells, at, time.days);
  }
  if (text === "") return { refused: (kind === "words" ? weighInWords.blankWords : weighInWords.blank)(name) };
  if (kind === "words") return judged(cells, at, text);
  if (text.toLowerCase() === weighingWords.tared) return judged(cells, at, weighingWords.tared);
  const [, bare, unit] = UNITS.exec(text) ?? [];
  if (bare !== undefined && unit !== undefined) return { refused: weighInWords.unit(unit, rule?.refusal ?? "") };
  // To a balance with three decimals it is what it shows.
  if (couldBeThousands(text) && decimalsOf(cells.sheet.options.readability) !== THOUSANDTHS) return { refused: weighInWords.twoWays(text) };
  const number = Number(text.replace(",", "."));
  return Number.isFinite(number) ? judged(cells, at, number) : { refused: rule?.refusal ?? weighInWords.noNumber(text) };
}

/** By the rule that stands over the box; its condition is that of the first box it is over. */
function judged(cells: SheetCells, at: Cell, content: number | string): Entry {
  const rule = cells.ruleOver(at.row, at.column);
  if (rule === undefined) return { content };
  const { allow, refusal, over } = rule;
  const first = over.kind === "cell" ? over : over.from;
  const holds = (): boolean => {
    switch (allow.kind) {
      case "number":
        return typeof content === "number" && content >= allow.atLeast && content <= allow.atMost;
      case "words":
        return allow.words.includes(String(content));
      case "condition":
        return workOut(allow.condition, recalculated(cells, new Map([[placeOf(cell(first.row, first.column)), content]])).at) === true;
      case "anything":
        return true;
    }
  };
  return holds() ? { content } : { refused: refusal };
}
