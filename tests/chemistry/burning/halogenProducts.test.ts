import { halogenProducts } from "../../../src/chemistry/burning/halogenProducts";

type Atoms = Readonly<Record<string, number>>;

const settled = (atoms: Atoms): { products: unknown[]; left: Atoms } => {
  const { products, left } = halogenProducts(new Map(Object.entries(atoms)));
  return { products: products.map(({ text, moles, leaves }) => [text, moles, leaves]), left: Object.fromEntries(left) };
};

// The convention of the docstring, worked by hand: Li, Na, K, then H; F, Cl, Br, I for each.
test("halogenProducts binds lithium before sodium, potassium and hydrogen, and fluorine before chlorine, bromine and iodine", () => {
  expect(settled({ H: 2, Li: 1, Na: 2, K: 1, F: 2, Cl: 1, Br: 2, I: 3 })).toEqual({
    products: [
      ["LiF", 1, "solid"],
      ["NaF", 1, "solid"],
      ["NaCl", 1, "solid"],
      ["KBr", 1, "solid"],
      ["HBr", 1, "gas"],
      ["HI", 1, "gas"],
      ["I2", 1, "gas"],
    ],
    left: { H: 0, Li: 0, Na: 0, K: 0, F: 0, Cl: 0, Br: 0, I: 2 },
  });
});

test.each(["Mg", "Ca", "Ba", "Zn", "Cu", "Al", "Fe"])("halogenProducts refuses halogen left over beside %s", (metal) => {
  const message =
    `formula: more halogen than hydrogen and alkali metal, so whether ${metal} ends as halide or oxide is open. ` + "Give the part that burns.";
  expect(() => settled({ C: 1, H: 1, Cl: 2, [metal]: 1 })).toThrow(new Error(message));
  expect(settled({ C: 1, H: 1, Na: 1, Cl: 2, [metal]: 1 }).products).toEqual([
    ["NaCl", 1, "solid"],
    ["HCl", 1, "gas"],
  ]);
});

test("halogenProducts takes counts that differ by rounding alone as equal", () => {
  expect(settled({ H: 0.3, Cl: 0.1 + 0.2, Fe: 1 }).products).toHaveLength(1);
  expect(() => settled({ H: 0.3, Cl: 0.3 + 2e-9, Fe: 1 })).toThrow("whether Fe ends as halide or oxide is open");
});
