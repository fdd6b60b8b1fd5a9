import { valueInFile } from "../../parts/cellValue";
import { CellPlaces } from "../../parts/CellPlaces";
import { isOn, readXml } from "../../parts/readXml";
import type { PartSource } from "../../parts/FileParts";
import { longer, TextGatherer, type SharedText } from "../../parts/sharedTexts";
import { cellAt } from "../../../workbook/cellArea";
import { slideFormula } from "../../../workbook/slideFormula";
import type { FileValue } from "./CellChange";

/** A cell of a file as it stands there. */
export interface CellInFile {
  /** From 0. */
  readonly row: number;
  readonly column: number;
  /** "B7" */
  readonly cell: string;
  /** As the file holds it, without "=", those of a group filled down from its first; "" for none. */
  readonly formula: string;
  readonly formulaKind: "none" | "plain" | "shared" | "array" | "dataTable";
  /** The cells that an array formula or a what-if table fills; "" for any other. */
  readonly fills: string;
  /** True for an array formula that is as large as its answer. */
  readonly spills: boolean;
  /** The cells that a what-if table puts its values into, "B7", in place of those that stand there; left out for any other cell. */
  readonly inputs?: { readonly row?: string; readonly column?: string };
  /** True in a row that is not shown. */
  readonly isHidden?: true;
  /** What the program that saved the file wrote down; null where it wrote nothing. Days count from the file's own day 0. */
  readonly value: FileValue;
  /** The number of its look. */
  readonly look: number;
}

interface Around {
  readonly texts: readonly SharedText[];
  /** The workbook's defined names in capitals. */
  readonly names: ReadonlySet<string>;
}

/** Tells every cell of a sheet's part that holds anything or has a look, row by row, without holding them all. */
export async function readCells(parts: PartSource, part: string, { texts, names }: Around, take: (cell: CellInFile) => void): Promise<void> {
  const inline = new TextGatherer();
  const groups = new Map<string, { readonly text: string; readonly row: number; readonly column: number }>();
  const path: string[] = [];
  const places = new CellPlaces();
  let isHidden = false;
  let cell:
    | {
        attributes: Readonly<Record<string, string>>;
        formula: { attributes: Readonly<Record<string, string>>; text: string } | undefined;
        value: string;
      }
    | undefined;

  const formulaAt = (text: string, group: string): string => {
    const { row, column } = places;
    const first = groups.get(group);
    if (text !== "" && first === undefined) groups.set(group, { text, row, column });
    if (text !== "" || first === undefined) return text;
    return slideFormula(first.text, { rows: row - first.row, columns: column - first.column }, names);
  };
  const ends = ({ attributes, formula, value }: NonNullable<typeof cell>): void => {
    const { content, isError } = valueInFile(attributes.t ?? "n", value, inline.taken().text, texts);
    const { t, si = "", ref = "" } = formula?.attributes ?? {};
    const { row, column } = places;
    const kind = formula === undefined ? "none" : t === "shared" || t === "array" || t === "dataTable" ? t : "plain";
    take({
      row,
      column,
      cell: cellAt(row, column),
      formulaKind: kind,
      spills: kind === "array" && attributes.cm !== undefined,
      formula: formula === undefined ? "" : kind === "shared" ? formulaAt(formula.text, si) : formula.text,
      fills: kind === "array" || kind === "dataTable" ? ref : "",
      value: isError ? { error: String(content) } : content,
      look: Number(attributes.s ?? 0),
      ...(isHidden && { isHidden }),
      ...(kind === "dataTable" && { inputs: inputsOf(formula?.attributes ?? {}) }),
    });
  };
  await readXml(parts, part, {
    open: (name, attributes) => {
      path.push(name);
      if (name === "row" && path.length === 3) {
        places.rowBegins(attributes.r);
        isHidden = isOn(attributes.hidden);
      } else if (name === "c" && path.length === 4) {
        places.cellBegins(attributes.r);
        cell = { attributes, formula: undefined, value: "" };
      } else if (cell !== undefined && name === "f") cell.formula = { attributes, text: "" };
      else if (cell !== undefined) inline.open(name);
    },
    text: (text) => {
      if (cell === undefined) return;
      if (path.at(-1) === "v") cell.value = longer(cell.value, text);
      else if (path.at(-1) === "f" && cell.formula !== undefined) cell.formula.text = longer(cell.formula.text, text);
      else inline.add(text);
    },
    close: (name) => {
      path.pop();
      if (cell === undefined) return;
      inline.close(name);
      if (name !== "c") return;
      ends(cell);
      cell = undefined;
    },
  });
}

/** ECMA-376 Part 1, 18.3.1.40: one input, of the row where dtr says so, else of the column; of two the first is that of the row. */
function inputsOf({ dt2D, dtr, r1, r2 }: Readonly<Record<string, string>>): NonNullable<CellInFile["inputs"]> {
  if (isOn(dt2D)) return { ...(r1 !== undefined && { row: r1 }), ...(r2 !== undefined && { column: r2 }) };
  return r1 === undefined ? {} : isOn(dtr) ? { row: r1 } : { column: r1 };
}
