import { detailBox } from "./constantWeightArguments";
import type { Layout } from "./layout";

/** The temperature that the chosen vessel material stands, looked up at the foot of the sheet; an error while none is chosen. */
export function materialStands(rows: Layout): string {
  const { first, last } = rows.materials;
  return `INDEX($B$${first}:$B$${last},MATCH(${detailBox(rows, "material")},$A$${first}:$A$${last},0))`;
}
