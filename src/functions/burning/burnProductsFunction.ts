import { OXYGEN_IN_AIR } from "../../chemistry/burning/airDemand";
import { burnProducts, restOfAirMolarMass, type BurnBalance } from "../../chemistry/burning/burnProducts";
import { burnReaction } from "../../chemistry/burning/burnReaction";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import type { Formula } from "../../chemistry/Formula";
import { parseFormula } from "../../chemistry/parseFormula";
import { numberText } from "../../inputs/numberText";
import { excessAir } from "../../inputs/kinds/oxygen";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { tableFunction, type Shown } from "../cellFunction";
import { label, molarMassInCells, oxygenInCells, typedFormulaOf } from "../inCells/formulaInCells";
import { isTypedNumber } from "../inCells/typedInCells";
import type { TableInCells } from "../inCells/Workings";
import { inFigures } from "../inFigures";
import { OPEN_BURNING } from "./cautions";

export const burnProductsFunction = tableFunction({
  name: "BURN.PRODUCTS",
  summary: "Products of complete burning as a table [mol per mol and g per g of fuel], with what goes in and what comes out.",
  inputs: {
    formula: formulaText('Chemical formula, such as "C6H10O5".'),
    excessAir: optional(excessAir("Air beyond the air needed, as a share of it: 0.15 is 15 % more."), "the air's nitrogen is not listed"),
  },
  result: { about: "Products of burning", unit: "" },
  computeTable: ({ formula, excessAir: excess }) => table(burnProducts(parseFormula(formula), excess)),
  working: ({ formula, excessAir: excess }) => {
    const parsed = parseFormula(formula);
    const { products, massIn, massOut } = burnProducts(parsed, excess);
    return [
      ...parsed.notes,
      `in = 1 + ${inFigures(massIn - 1)} = ${inFigures(massIn)} g per g fuel`,
      `out = ${products.map(({ grams }) => inFigures(grams)).join(" + ")} = ${inFigures(massOut)} g per g fuel`,
    ];
  },
  inManyCells: ({ formula: typed, excessAir: excess }) => {
    const formula = typedFormulaOf(typed);
    // Whether the air is listed at all, and with it the rows of the table, must not hang on a cell.
    return formula === undefined || (excess !== "" && !isTypedNumber(excess)) ? undefined : tableInCells(formula, excess);
  },
  examples: [
    {
      cell: '=RETORT.BURN.PRODUCTS("CH4")',
      gives: [
        ["Product", "mol per mol fuel", "g per g fuel"],
        ["CO2", 1, 2.7431901764009226],
        ["H2O", 2, 2.2458393068628064],
        ["In: fuel + oxygen", "", 4.989029483263729],
        ["Out: products", "", 4.989029483263729],
      ],
      about: "1 g of methane gives 4.99 g of gases: burning takes up oxygen.",
    },
  ],
  source: "Conservation of each element; products as listed at OXYGENDEMAND. Dry air holds 0.2314 of oxygen by mass. Atomic weights CIAAW 2021.",
  caution: OPEN_BURNING,
});

const table = ({ products, oxygenTaken, air, massIn, massOut }: BurnBalance): readonly (readonly Shown[])[] => [
  ["Product", "mol per mol fuel", "g per g fuel"],
  ...products.map(({ product, moles, grams }) => [product, moles, grams]),
  [air !== undefined ? "In: fuel + air" : oxygenTaken > 0 ? "In: fuel + oxygen" : "In: fuel", "", massIn],
  ["Out: products", "", massOut],
];

/** The same table written out: count times atomic weight for each product and for the fuel. */
function tableInCells(formula: Formula, excess: string): TableInCells {
  const balance = burnProducts(formula, excess === "" ? undefined : Number(excess));
  const { oxygen, products } = burnReaction(formula);
  const fuel = molarMassInCells(formula.atoms);
  const taken = oxygen > ROUNDING_RESIDUE ? `${numberText(oxygen)}*${oxygenInCells()}/${fuel}` : "0";
  const air = `(${taken})/${OXYGEN_IN_AIR}*(1+${excess})`;
  const restOfAir = `${air}*(1-${OXYGEN_IN_AIR})`;
  const written: readonly (readonly [moles: string, grams: string])[] = [
    ...products.map(({ atoms, moles }) => [numberText(moles), `${numberText(moles)}*${molarMassInCells(atoms)}/${fuel}`] as const),
    ...(oxygen < -ROUNDING_RESIDUE ? [[numberText(-oxygen), `${numberText(-oxygen)}*${oxygenInCells()}/${fuel}`] as const] : []),
    ...(excess === ""
      ? []
      : [
          [`${numberText(oxygen)}*${excess}`, `${taken}*${excess}`] as const,
          [`${restOfAir}*${fuel}/${numberText(restOfAirMolarMass())}`, restOfAir] as const,
        ]),
  ];
  const [headings, ...rows] = table(balance);
  const labels = rows.map(([shown]) => label(String(shown)));
  const lines = written.map(([moles, grams], index) => [labels[index] ?? "", moles, grams]);
  return [
    (headings ?? []).map((heading) => label(String(heading))),
    ...lines,
    [labels.at(-2) ?? "", '""', `1+${excess === "" ? taken : air}`],
    [labels.at(-1) ?? "", '""', written.map(([, grams]) => grams).join("+")],
  ];
}
