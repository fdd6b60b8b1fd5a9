import { areaNamed } from "../../../workbook/areaNamed";
import { rangeOf } from "../../../workbook/cellArea";
import { joinedAreas } from "../../joinedAreas";
import { STALE, type Largest } from "./flagText";
import type { ReadFormula } from "../reading/ReadSheets";
import type { Precedent } from "./FormulaSources";
import { calculatedFrom } from "./staleness";
import { unseenBefore, type SeenFrom } from "./unseen";
import type { WorkingsSheet } from "../WorkingsSheet";

/**
 * What a formula is stale with besides the cells that it shows to refer to: where it does not show them all, every fixed cell, and every cell that
 * a form is written for. An input of fixed cells is not asked for those that are calculated from it, to which it cannot refer.
 */
export function anyStale(
  { sheets, sources, fixed, held, sizes, staleness, workings }: SeenFrom & { readonly workings: WorkingsSheet },
  largest: Largest,
): (id: number) => readonly string[] {
  const inputs = new Set(unseenBefore({ sources, fixed, staleness }));
  const later = calculatedFrom(sheets, sources, inputs, [], sizes);
  const asked = (isLeftOut: (id: number) => boolean): string => {
    const cells = [...fixed].filter((id) => !isLeftOut(id)).map((id) => sheets.formulas[id] as ReadFormula);
    const forms = [...held].flatMap(([id, areas]) => (isLeftOut(id) ? [] : areas));
    const resized = [...sizes.resized].flatMap(([id, text]) => (isLeftOut(id) ? [] : [text]));
    const text = `IF(${largest(joined(cells), false)}=${STALE},${STALE},IF(${largest(joined(forms), true, ...resized)}>0,${STALE},0))`;
    return workings.rows("Whether inputs of any fixed cell changed", [text]);
  };
  const [ofAll, ofOthers] = [once(() => asked(() => false)), once(() => asked((id) => later.has(id)))];
  return (id) => (sources[id]?.isUnseen !== true || fixed.has(id) ? [] : [inputs.has(id) ? ofOthers() : ofAll()]);
}

function once(make: () => string): () => string {
  let made: string | undefined;
  return () => (made ??= make());
}

/** Single cells that stand together as one area; others stay, since each is counted by itself. */
function joined(areas: readonly Precedent[]): readonly Precedent[] {
  const bySheet = new Map<string, Set<string>>();
  for (const { sheet, area } of areas) bySheet.set(sheet, (bySheet.get(sheet) ?? new Set()).add(rangeOf(area)));
  return [...bySheet].flatMap(([sheet, ranges]) =>
    joinedAreas([...ranges].map((range) => ({ range, values: [[null]] }))).map(({ range }) => ({ sheet, area: areaNamed(range) })),
  );
}
