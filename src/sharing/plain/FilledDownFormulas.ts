import type { FormulaSources } from "./change/FormulaSources";
import { plainFormula } from "./plainFormula";
import { sourcesOf } from "./change/precedents";
import type { ReadFormula, ReadSheets } from "./reading/ReadSheets";
import { areaInRow, relativeFormula, textInRows, type RelativeFormula } from "./formula/RelativeFormula";
import type { Growth } from "./reading/Growth";
import type { PlainOptions, Surroundings } from "./reading/Surroundings";
import type { WorkingsSheet } from "./WorkingsSheet";

type NameOf = Surroundings["nameOf"];
type Plain = ReturnType<typeof plainFormula>;

interface Known<T> {
  /** Made when a second cell asks. */
  relative?: { readonly inRow: ((row: number) => T) | undefined };
}

/** Far down nothing is beside it, so that one that may fill other cells is looked at where it stands. */
const NO_ROOM: Growth = { isFree: () => false, isAsked: () => true };

const LEADS_ELSEWHERE = /\bHYPERLINK\(/i;

/** What is made of formulas, made once for all cells of a column that one is filled down to: taking formulas apart takes most of the time. */
export class FilledDownFormulas {
  private readonly sources = new Map<string, Known<FormulaSources>>();
  private readonly plain = new Map<string, Known<Plain>>();

  constructor(
    private readonly sheets: ReadSheets,
    private readonly options: PlainOptions,
    private readonly workings: WorkingsSheet,
  ) {}

  sourcesOf(formula: ReadFormula, nameOf: NameOf): FormulaSources {
    const { sheets } = this;
    const here = (): FormulaSources => sourcesOf(formula.reading.formula, sheets.around(formula, nameOf), sheets.names, sheets.order);
    return madeOnce(this.sources, formula, here, (relative) => {
      const found = sourcesOf(relative.formula, this.far(relative, formula.sheet, nameOf), sheets.names, sheets.order);
      // What it refers to without showing it is told by the cells beside it.
      if (found.isUnseen || LEADS_ELSEWHERE.test(relative.formula)) return undefined;
      return (row) => ({ ...found, precedents: found.precedents.map(({ sheet, area }) => ({ sheet, area: areaInRow(area, row) })) });
    });
  }

  /** @param growth what is beside it where it takes as many cells as its answer needs */
  plainFormula(formula: ReadFormula, nameOf: NameOf, growth: Growth | undefined): Plain {
    const { sheets, options, workings } = this;
    const place = (): Surroundings => sheets.around(formula, nameOf, options.areUnfilled, growth);
    const here = (): Plain => plainFormula(formula.reading.formula, place(), options, workings);
    return madeOnce(this.plain, formula, here, (relative) => {
      const mark = workings.mark();
      const far = this.far(relative, formula.sheet, nameOf);
      const found = plainFormula(relative.formula, growth === undefined ? far : { ...far, growth: NO_ROOM }, options, workings);
      const isAlone = found.kind === "formula" && !found.isArray && workings.mark()[0] === mark[0];
      workings.backTo(mark);
      if (!isAlone) return undefined;
      const inRow = textInRows(found.formula);
      return (row) => ({ ...found, formula: inRow(row) });
    });
  }

  /** Around a formula far down, where no cell holds anything. */
  private far({ row }: RelativeFormula, sheet: string, nameOf: NameOf): Surroundings {
    const cell = `A${row}`;
    return { sheet, cell, area: cell, nameOf, tableOf: () => undefined, spillOf: () => undefined };
  }
}

/** @param there what is made far down, for any row; undefined where it cannot be moved */
function madeOnce<T>(
  known: Map<string, Known<T>>,
  { sheet, reading, area }: ReadFormula,
  here: () => T,
  there: (relative: RelativeFormula) => ((row: number) => T) | undefined,
): T {
  if (area.rows * area.columns > 1) return here();
  const row = area.row + 1;
  const relative = relativeFormula(reading.formula, row);
  if (relative === undefined) return here();
  const key = `${sheet}!${reading.spills === true ? "#" : ""}${relative.formula}`;
  const before = known.get(key);
  if (before === undefined) {
    const first = here();
    known.set(key, {});
    return first;
  }
  before.relative ??= { inRow: there(relative) };
  return before.relative.inRow === undefined ? here() : before.relative.inRow(row);
}
