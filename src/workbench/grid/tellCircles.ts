import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { typedInCircle } from "../../problems/workbook/cellNotes";
import { cellAt } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import type { CellAddress, CellLook, Workbook } from "../../workbook/Workbook";

// With what tells of other formulas.
const FIRST = 200;

/** Tells of a formula that is calculated from its own cell as soon as it is entered, be it by way of other cells. */
export function tellCircles(engine: GridEngine, say: (sentence: string) => void): void {
  engine.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (typed, { row, col, worksheet }, next) => {
      const formula = typed?.f ?? "";
      const address = { sheet: worksheet.getName(), cell: cellAt(row, col) };
      if (formula !== "")
        void circle(engine, address, formula).then((cells) => {
          const isIn = cells?.some(({ sheet, cell }) => sheet === address.sheet && cell === address.cell);
          if (cells !== undefined && isIn === true) say(typedInCircle(address.cell, namesOn(address.sheet, cells)));
        });
      return next(typed);
    },
  });
}

/** The workbook, saying of the cell that is looked at which circle it is calculated from. */
export function withCircles(workbook: Workbook, engine: GridEngine): Workbook {
  const marked = async (look: CellLook): Promise<CellLook> => {
    const cells = (look.anchor ?? look.reading).formula === "" ? undefined : await circle(engine, { ...look.address, cell: (look.anchor ?? look.reading).cell }); // prettier-ignore
    return cells === undefined ? look : { ...look, reading: { ...look.reading, circle: namesOn(look.address.sheet, cells) } };
  };
  const changed: Partial<Workbook> = {
    look: async (address) => marked(await workbook.look(address)),
    readInputs: async (address, wanted) => {
      const { again, ...others } = await workbook.readInputs(address, wanted);
      return { ...others, again: await marked(again) };
    },
  };
  return new Proxy(workbook, {
    get: (target, key) => {
      const own: unknown = Reflect.get(changed, key) ?? Reflect.get(target, key, target);
      return typeof own === "function" ? (own.bind(target) as unknown) : own;
    },
  });
}

/** Fetched when somebody types a formula or looks at one. */
async function circle(engine: GridEngine, address: CellAddress, typed?: string): Promise<readonly CellAddress[] | undefined> {
  const { circleAbove } = await import("./circleAbove");
  return circleAbove(engine, address, typed);
}

const namesOn = (sheet: string, cells: readonly CellAddress[]): string[] =>
  cells.map((one) => (one.sheet === sheet ? one.cell : `${one.sheet}!${one.cell}`));
