import { cell, range } from "../../expressions/Expression";
import { coldEnough, correctionOf, STRIP_COLUMNS, stripCell } from "../../formulas/strip";
import { optionBounds } from "../../options/optionBounds";
import { inDegrees } from "../../options/degrees";
import { LABEL } from "../../sheet/Columns";
import type { StripRows } from "../../sheet/layout";
import type { RunSheet } from "../../sheet/RunSheet";
import { degreeWords, zeroWords } from "../../words/BoxWords";
import { stripWords } from "../../words/stripWords";
import { weighingWords } from "../../words/weighingWords";
import { band, calculated, type Block, type BlockCell, type BoxRule } from "../Block";
import { box, boxRule, numbers, zeros } from "../entries";

/** What was read beside a table of weighings: the balance's zeros, and where asked for the temperatures of room and sample. */
export function stripBlock(
  sheet: RunSheet,
  strip: Pick<StripRows, "heading" | "vessel" | "first">,
  labels: readonly string[],
  hasTemperatures: boolean,
): Block {
  const { columns, options, formats } = sheet;
  const { panZeros, degrees, readability } = options;
  const names = stripWords.columns(degrees);
  const vesselRow = panZeros && strip.vessel !== undefined ? [{ row: strip.vessel, label: weighingWords.vessel.label, isWarm: false }] : [];
  const lines = [...vesselRow, ...labels.map((label, index) => ({ row: strip.first + index, label, isWarm: hasTemperatures }))];
  const zeroColumns = panZeros ? (["before", "after"] as const) : [];
  const warmColumns = hasTemperatures ? (["room", "warmth"] as const) : [];
  const headings = {
    [LABEL]: stripWords.heading,
    ...Object.fromEntries([...zeroColumns, ...warmColumns].map((name) => [STRIP_COLUMNS[name], names[name]])),
    ...(panZeros ? { [columns.reckoned(1, 1).column]: names.correction } : {}),
    ...(hasTemperatures ? { [columns.verdict]: names.cold } : {}),
  };
  const [from, to] = [lines[0]?.row ?? 0, lines.at(-1)?.row ?? 0];
  const bounds = inDegrees(optionBounds.balance, degrees);
  return {
    cells: [
      ...band(sheet, strip.heading, "runLightBandWrapped", headings),
      ...lines.flatMap(({ row, label, isWarm }): BlockCell[] => [
        { at: cell(row, LABEL), content: label, style: "runLabel" },
        ...zeroColumns.map((name) => box(stripCell(row, name), { format: formats.read })),
        ...(isWarm ? warmColumns.map((name) => box(stripCell(row, name), { format: "0.0" })) : []),
        ...(panZeros ? [calculated(columns.reckoned(row, 1), correctionOf(row), "runReckoned", formats.corrected)] : []),
        ...(isWarm ? [calculated(cell(row, columns.verdict), coldEnough(sheet, row), "runVerdict")] : []),
      ]),
    ],
    entryRules: [
      ...zeroColumns.map((name): BoxRule => boxRule(range(stripCell(from, name), stripCell(to, name)), zeroWords(name), zeros(readability))),
      ...warmColumns.map((name): BoxRule => {
        const { title, prompt } = stripWords[name];
        return boxRule(range(stripCell(strip.first, name), stripCell(to, name)), degreeWords(title, prompt, degrees, bounds), numbers(bounds));
      }),
    ],
  };
}
