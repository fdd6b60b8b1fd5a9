import type { SheetPlan } from "../workbook/SheetPlan";
import type { BlockName } from "./BlockName";
import { planBalanceSheet } from "./blocks/balance/planBalanceSheet";
import { together, type Block } from "./blocks/Block";
import { cautionsBlock } from "./blocks/cautionsBlock";
import { checksBlock } from "./blocks/checksBlock";
import { compoundBlock } from "./blocks/compoundBlock";
import { curvesBlock, runCharts } from "./blocks/curvesBlock";
import { emphasisOf } from "./blocks/emphasis";
import { headBlock } from "./blocks/headBlock";
import { materialsBlock } from "./blocks/materialsBlock";
import { openFireBlock } from "./blocks/openFireBlock";
import { caughtBlock } from "./blocks/phases/caughtBlock";
import { dryingBlock } from "./blocks/phases/dryingBlock";
import { endBlock } from "./blocks/phases/endBlock";
import { firingBlock } from "./blocks/phases/firingBlock";
import { stagesBlock } from "./blocks/phases/stagesBlock";
import { plannedSheet } from "./blocks/plannedSheet";
import { resultsBlock } from "./blocks/resultsBlock";
import { settingsBlock } from "./blocks/settingsBlock";
import { setupBlock } from "./blocks/setupBlock";
import { watched } from "./blocks/typedOverBlock";
import type { Cell } from "./expressions/Expression";
import { placeOf } from "./expressions/formulaText";
import { KINDS } from "./kinds";
import { checkOptions } from "./options/checkOptions";
import type { CheckedOptions, RunSheetOptions } from "./options/RunSheetOptions";
import type { BALANCE_BLOCKS } from "./sheet/balanceRows";
import { balanceSheet } from "./sheet/BalanceSheet";
import { CLOCK } from "./sheet/Columns";
import type { CheckName } from "./sheet/layout";
import { runSheet, type RunSheet } from "./sheet/RunSheet";

/**
 * A blank run sheet: what the person at the bench fills in stands in boxes in the order of the work, everything else is
 * calculated and empty until then.
 * @throws InputProblem naming the option that cannot serve
 */
export function buildRunSheet(options: RunSheetOptions): SheetPlan {
  const checked = checkOptions(options);
  if (checked.kind === "balance") return planBalanceSheet(balanceSheet(checked));
  const sheet = runSheet(checked);
  return plannedSheet(sheet, everyBlock(sheet), {
    emphasis: emphasisOf(sheet),
    charts: runCharts(sheet),
    startAt: placeOf(sheet.columns.box(sheet.rows.drying.vessel, 1)),
  });
}

/** The blocks of a sheet with formulas still as data, each calculated cell watched. */
export const everyBlock = (sheet: RunSheet): Block => keptOr(sheet.options, () => makeBlocks(sheet));

// Following one sheet asks for its blocks at every selection, and growing it for those of both sizes.
const KEPT = 4;
const kept = new Map<string, Block>();

/** Blocks follow from the options alone; those of the sheets asked for last are kept, because the largest takes a tenth of a second. */
function keptOr(options: CheckedOptions, make: () => Block): Block {
  const key = JSON.stringify(options);
  const block = kept.get(key) ?? make();
  kept.delete(key);
  kept.set(key, block);
  for (const oldest of [...kept.keys()].slice(0, -KEPT)) kept.delete(oldest);
  return block;
}

function makeBlocks(sheet: RunSheet): Block {
  const names = KINDS[sheet.options.kind].filter((name): name is SampleBlock => name !== "checks");
  const made = names.map((name, index) => BLOCKS[name](sheet, phaseNumber(names, index)));
  const totals = sheet.tables.map(({ rows }) => rows.total);
  return watched(sheet, together(headBlock(sheet), ...made, checksBlock(sheet)), {
    totals,
    isAside: asideOf(sheet),
    decides: [sheet.working.absent],
  });
}

/** Checks that decide whether there is an answer, and do not merely mark it. */
const DECIDES: readonly CheckName[] = ["agree", "theory"];

/** What the answer asks and is not calculated from: marks, whether Retort is here, and what each round lost, told only while drying. */
function asideOf({ rows, drying, samples, working }: RunSheet): (at: Cell) => boolean {
  const marks = new Set(rows.checks.lines.filter(({ check }) => !DECIDES.includes(check)).map(({ row }) => row));
  const losses = new Set(samples.map((sample) => drying.lost(rows.drying.first, sample).column));
  return ({ row, column }) =>
    (marks.has(row) && column <= CLOCK + 1) ||
    (losses.has(column) && row >= rows.drying.first && row <= rows.drying.last) ||
    (row === working.absent.row && column === working.absent.column);
}

type SampleBlock = Exclude<BlockName, "checks" | keyof typeof BALANCE_BLOCKS>;

const BLOCKS: Readonly<Record<SampleBlock, (sheet: RunSheet, number: number) => Block>> = {
  setup: setupBlock,
  drying: dryingBlock,
  charring: (sheet, number) => (sheet.charring === undefined ? together() : firingBlock(sheet, sheet.charring, "charring", number)),
  ashing: (sheet, number) => (sheet.ashing === undefined ? together() : firingBlock(sheet, sheet.ashing, "ashing", number)),
  caught: (sheet, number) => (sheet.caught === undefined ? together() : caughtBlock(sheet, sheet.caught, number)),
  stages: (sheet) => (sheet.stages === undefined ? together() : stagesBlock(sheet, sheet.stages)),
  heating: (sheet, number) => (sheet.heating === undefined ? together() : firingBlock(sheet, sheet.heating, "heating", number)),
  compound: (sheet) => (sheet.salt === undefined ? together() : compoundBlock(sheet, sheet.salt)),
  end: endBlock,
  cautions: cautionsBlock,
  results: resultsBlock,
  settings: settingsBlock,
  openFire: (sheet) => (sheet.composition === undefined ? together() : openFireBlock(sheet, sheet.composition)),
  curves: curvesBlock,
  materials: materialsBlock,
};

/** Phases of the work are numbered from 1; the set-up before them and what the compound is are not. */
const phaseNumber = (names: readonly BlockName[], index: number): number =>
  names.slice(0, index + 1).filter((name) => name !== "setup" && name !== "compound").length;
