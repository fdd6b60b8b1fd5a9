import { relationshipsOf } from "../../parts/relationships";
import type { FileValue } from "../cells/CellChange";
import type { EditableParts } from "../parts/EditableParts";
import { readsGone } from "../sheets/namedSheets";
import { changeTableFormulas } from "../besideCells/tableFormulas";
import { workbookOutline } from "../workbookOutline";
import { takeChoosers } from "../forgetting/choosers";
import { takeQueries } from "../forgetting/queries";
import { goneBeside } from "./goneWith";
import { stillChart } from "./stillCharts";
import { stillControls } from "./stillControls";
import { stillDrawing } from "./stillDrawing";
import { takeLinks } from "./takeLinks";
import { takeNewerCharts } from "./takeNewerCharts";
import { takePivotsOfGone } from "./takePivotsOfGone";
import { takeSmallCharts } from "./takeSmallCharts";

/** Something beside the cells that could not stay. */
export interface TakenAlone {
  readonly what: "link" | "smallChart" | "series" | "chart" | "pivot" | "slicer" | "query";
  /** Other sheets, or a connection of the workbook. */
  readonly why: "notShared" | "connection";
  readonly sheet: string;
  /** Its cell; "" for what stands in none. */
  readonly cell: string;
}

/**
 * Makes what stands beside the cells of some sheets do without every other sheet, before these go: charts are drawn from values of their own, shapes keep
 * their words; links that lead away, pivot tables of data that go, charts in single cells and those of later versions are taken out. Rules and names are not looked at.
 * @param valuesOf the values of a range that goes, row by row
 */
export async function standAlone(
  parts: EditableParts,
  kept: readonly string[],
  valuesOf: (formula: string) => readonly FileValue[] | undefined,
): Promise<readonly TakenAlone[]> {
  const outline = await workbookOutline(parts);
  const gone = goneBeside(outline, kept);
  const isGone = (formula: string): boolean => formula !== "" && readsGone(formula, gone);
  const taken: TakenAlone[] = [];
  const wanted = new Set(kept.map((name) => name.toLowerCase()));
  for (const { name: sheet, part, kind } of outline.sheets) {
    if (kind !== "worksheet" || !wanted.has(sheet.toLowerCase())) continue;
    const note = (what: TakenAlone["what"], cells: readonly string[], why: TakenAlone["why"] = "notShared"): void =>
      void taken.push(...cells.map((cell) => ({ what, sheet, cell, why })));
    await changeTableFormulas(parts, part, { column: (formula) => (isGone(formula) ? undefined : formula), stillTotals: isGone });
    note("link", await takeLinks(parts, part, isGone));
    for (const { area, isConnected } of await takePivotsOfGone(parts, part, isGone, (name) => wanted.has(name.toLowerCase())))
      note("pivot", [area], isConnected ? "connection" : "notShared");
    note("query", await takeQueries(parts, part), "connection");
    await stillControls(parts, part, isGone);
    note("smallChart", await takeSmallCharts(parts, part, isGone));
    for (const drawing of (await relationshipsOf(parts, part)).filter(({ type }) => type === "drawing")) {
      note("chart", Array<string>(await takeNewerCharts(parts, drawing.target, isGone)).fill(""));
      note("link", Array<string>(await stillDrawing(parts, drawing.target, isGone)).fill(""));
      for (const { type, target } of await relationshipsOf(parts, drawing.target)) {
        if (type !== "chart" || !parts.has(target)) continue;
        note("series", Array<string>(await stillChart(parts, target, { isGone, valuesOf })).fill(""));
        for (const drawn of (await relationshipsOf(parts, target)).filter((one) => one.type === "chartUserShapes" && parts.has(one.target)))
          await stillDrawing(parts, drawn.target, isGone);
      }
    }
  }
  const choosers = await takeChoosers(parts, outline.sheets.filter(({ name }) => wanted.has(name.toLowerCase()))); // prettier-ignore
  taken.push(...choosers.map(({ name }) => ({ what: "slicer" as const, sheet: name, cell: "", why: "notShared" as const })));
  return taken;
}
