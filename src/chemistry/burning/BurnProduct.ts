import type { Leaves } from "./endProducts";

/** One product of complete burning. */
export interface BurnProduct {
  readonly text: string;
  /** Count of each element in one formula unit of the product. */
  readonly atoms: ReadonlyMap<string, number>;
  /** mol per mol of fuel. */
  readonly moles: number;
  readonly leaves: Leaves;
}
