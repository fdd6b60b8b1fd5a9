// Invented runs of a community orchard's char kiln and a class, filled in as they are inserted.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { cell, type Cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { runSheet, type RunSheet } from "../../../src/runsheet/sheet/RunSheet";
import type { SheetPlan } from "../../../src/workbook/SheetPlan";
import type { Workbook } from "../../../src/workbook/Workbook";
import { clock, USUAL } from "../plainRun";

/** What a sample's vessel weighs: empty, moist, dry, with char, with ash. g */
export interface Weighed {
  readonly vessel: number;
  readonly moist: number;
  readonly dry: number;
  readonly char?: number;
  readonly ash?: number;
}

type Typed = readonly (readonly [at: Cell, content: string | number])[];

/** Boxes of a run of one sample or more, dried in three rounds and fired twice, with the vessel weighed again. */
export function weighed(sheet: RunSheet, samples: readonly Weighed[]): Typed {
  const { drying, charring, ashing, end, rows, columns } = sheet;
  // All figures of a balance of 0.01 g; what is left of a sample is the same.
  const shown = (grams: number): number => Number((grams + 0.03).toFixed(5));
  const every = samples.map(({ vessel, moist, dry, char, ash }) => ({
    ...{ vessel: shown(vessel), moist: shown(moist), dry: shown(dry) },
    ...{ char: char === undefined ? undefined : shown(char), ash: ash === undefined ? undefined : shown(ash) },
  }));
  return every.flatMap(({ vessel, moist, dry, char, ash }, index): Typed => {
    const sample = index + 1;
    const phases = [
      [charring, char],
      [ashing, ash],
    ] as const;
    return [
      [columns.box(rows.drying.vessel, sample), vessel],
      ...[moist, dry, dry].flatMap((grams, round): Typed => {
        const row = drying.rows.first + round;
        return [
          [cell(row, CLOCK), clock(9, 30 * round)],
          [drying.box(row, sample), grams],
        ];
      }),
      ...phases.flatMap(([table, grams]): Typed => {
        if (table === undefined || grams === undefined) return [];
        return [0, 1].flatMap((firing): Typed => [
          [table.fire(table.rows.fire.first + firing).held, 60],
          [table.box(table.rows.first + firing, sample), grams],
        ]);
      }),
      ...(end === undefined || char === undefined ? [] : ([[end.vessel(sample), vessel]] as const)),
    ];
  });
}

/** A tin of 25 g with 20 g of dry prunings, of which a share leaves. */
export const prunings = (vapour: number, ash?: number): Weighed => ({
  vessel: 25,
  moist: 65,
  dry: 45,
  char: Number((45 - 20 * vapour).toFixed(2)),
  ...(ash === undefined ? {} : { ash: Number((25 + 20 * ash).toFixed(2)) }),
});

export const charring: RunSheetOptions = { ...USUAL, kind: "charring", weighIns: 3, charFirings: 2 };

/** A run sheet under a name of its own, with what is typed into it. */
export function filled(name: string, options: RunSheetOptions, type: (sheet: RunSheet) => Typed): SheetPlan {
  const plan = buildRunSheet(options);
  const typed = new Map(type(runSheet(checkOptions(options))).map(([at, content]) => [placeOf(at), content]));
  return { ...plan, name, cells: plan.cells.map((one) => (typed.has(one.cell) ? { ...one, content: typed.get(one.cell) ?? "" } : one)) };
}

/** A charring run of one sample with its share of vapour. */
export const kiln = (name: string, share: number): SheetPlan => filled(name, charring, (sheet) => weighed(sheet, [prunings(share)]));

interface Shown {
  readonly workbook: Pick<Workbook, "readUsed">;
  settled(): Promise<void>;
}

/** A gathered sheet as shown, row by row, in its printed columns. */
export async function rowsShown(open: Shown, sheet: string): Promise<(row: number) => readonly string[]> {
  await open.settled();
  const { rows } = await open.workbook.readUsed(sheet);
  return (row) => (rows[row - 1] ?? []).slice(0, 9).map(({ shown }) => shown);
}
