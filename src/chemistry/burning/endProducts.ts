/** How the end product leaves: off with the gases, as a fume that settles as dust, or left behind in the vessel. */
export type Leaves = "gas" | "smoke" | "solid";

export interface EndProduct {
  readonly element: string;
  /** The product's formula, and how many atoms of the element and of oxygen it holds. */
  readonly product: string;
  readonly atoms: number;
  readonly oxygen: number;
  readonly leaves: Leaves;
}

const end = (element: string, product: string, atoms: number, oxygen: number, leaves: Leaves): EndProduct => ({
  element,
  product,
  atoms,
  oxygen,
  leaves,
});

/**
 * What each element ends as in complete burning, in the order products are listed. Halogens are settled apart, in
 * halogenProducts.ts. Nitrogen oxides are traces, never counted. Alkali metals often end as carbonate; that takes up the
 * same oxygen. Source: the usual complete-combustion convention of stoichiometry texts; for P and Na the same oxygen
 * as OECD Test Guideline 301, annex on theoretical oxygen demand (from memory).
 */
export const endProducts: readonly EndProduct[] = [
  end("C", "CO2", 1, 2, "gas"),
  end("H", "H2O", 2, 1, "gas"),
  end("N", "N2", 2, 0, "gas"),
  end("S", "SO2", 1, 2, "gas"),
  end("P", "P4O10", 4, 10, "smoke"),
  end("Li", "Li2O", 2, 1, "solid"),
  end("Na", "Na2O", 2, 1, "solid"),
  end("K", "K2O", 2, 1, "solid"),
  end("Mg", "MgO", 1, 1, "solid"),
  end("Ca", "CaO", 1, 1, "solid"),
  end("Ba", "BaO", 1, 1, "solid"),
  end("Zn", "ZnO", 1, 1, "solid"),
  end("Cu", "CuO", 1, 1, "solid"),
  end("Al", "Al2O3", 2, 3, "solid"),
  end("Fe", "Fe2O3", 2, 3, "solid"),
  end("Si", "SiO2", 1, 2, "solid"),
];

/** One product of complete burning. */
export interface BurnProduct {
  readonly text: string;
  /** Count of each element in one formula unit of the product. */
  readonly atoms: ReadonlyMap<string, number>;
  /** mol per mol of fuel. */
  readonly moles: number;
  readonly leaves: Leaves;
}
