import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { proximate, type ProximateShares } from "../../residue/proximate";
import { weighingsOutOfOrder } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { label } from "../inCells/formulaInCells";
import { driedInCells, orderInCells } from "../inCells/orderInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { CLOSED_HEATING } from "./cautions";

const ROWS: readonly (readonly [label: string, share: keyof ProximateShares])[] = [
  ["Moisture", "moisture"],
  ["Volatile matter", "volatileMatter"],
  ["Fixed carbon", "fixedCarbon"],
  ["Ash", "ash"],
];

const sum = (shares: ProximateShares): number => ROWS.reduce((total, [, share]) => total + shares[share], 0);

export const proximateFunction = tableFunction({
  name: "PROXIMATE",
  summary: "Table of a proximate analysis from five weighings of one vessel: moisture, volatile matter, fixed carbon and ash, as received and dry.",
  inputs: {
    vessel: vesselMass('Empty vessel with lid [g], or "tared".'),
    moist: mass("Vessel with the sample as received [g]."),
    dry: mass("The same after drying, cooled [g]."),
    char: { ...mass("The same after heating closed, cooled closed [g]."), detail: "After 7 min at 900 °C (ISO 18123) or 950 °C (ASTM E872)." },
    ash: {
      ...mass("The same after burning the char to ash in air, cooled [g]."),
      detail: "With the same lid on, if the vessel was weighed with it.",
    },
  },
  result: { about: "Four shares and their sum, as fractions, under headings", unit: "" },
  computeTable: ({ vessel, moist, dry, char, ash }) => {
    const { asReceived, dry: onDry } = proximate(vessel, moist, dry, char, ash);
    return [
      ["Share", "As received", "Dry"],
      ...ROWS.map(([label, share]) => [label, asReceived[share], onDry[share]]),
      ["Sum", sum(asReceived), sum(onDry)],
    ];
  },
  working: ({ vessel, moist, dry, char, ash }) => {
    const sample = moist - vessel;
    const line = (label: string, from: number, to: number): string =>
      `${label} = (${inFigures(from)} - ${inFigures(to)}) / ${inFigures(sample)} = ${inFigures((from - to) / sample)}`;
    return [
      `sample as received = ${inFigures(moist)} - ${inFigures(vessel)} = ${inFigures(sample)} g`,
      line("moisture", moist, dry),
      line("volatile matter", dry, char),
      line("fixed carbon", char, ash),
      line("ash", ash, vessel),
      `dry: each over ${inFigures(dry)} - ${inFigures(vessel)} = ${inFigures(dry - vessel)} g instead`,
      "the sum is 1 whatever was weighed, so it does not prove the weighings",
    ];
  },
  refusesInCells: ({ vessel, moist, dry, char, ash }) => [
    ...driedInCells({ vessel, moist, dry }),
    orderInCells({ vessel, dry, char }),
    orderInCells({ vessel, dry, ash }),
    { when: `${operand(ash)}>${operand(char)}`, says: weighingsOutOfOrder(["ash", "char"]) },
  ],
  inManyCells: ({ vessel, moist, dry, char, ash }) => {
    const [start, dried, charred, burnt, empty] = [operand(moist), operand(dry), operand(char), operand(ash), numberInCells(vessel, 0)];
    const steps = [`${start}-${dried}`, `${dried}-${charred}`, `${charred}-${burnt}`, `${burnt}-${empty}`];
    const over = (step: string, whole: string): string => `(${step})/(${whole}-${empty})`;
    const rows = steps.map((step, index) => [label(ROWS[index]?.[0] ?? ""), over(step, start), index === 0 ? "0" : over(step, dried)]);
    const sum = (column: number): string => rows.map((row) => row[column]).join("+");
    return [["Share", "As received", "Dry"].map(label), ...rows, [label("Sum"), sum(1), sum(2)]];
  },
  examples: [
    {
      cell: '=RETORT.PROXIMATE("tared", 1, 0.5, 0.25, 0.125)',
      gives: [
        ["Share", "As received", "Dry"],
        ["Moisture", 0.5, 0],
        ["Volatile matter", 0.25, 0.5],
        ["Fixed carbon", 0.125, 0.25],
        ["Ash", 0.125, 0.25],
        ["Sum", 1, 1],
      ],
    },
  ],
  source:
    "ASTM D3172 to D3175 and ISO 17246 (from memory): each loss over one sample. Charred otherwise, as in a kiln, the second share is a volatile fraction at your temperature. Ash from another sample: use ASHFRACTION and FIXEDCARBON.",
  caution: CLOSED_HEATING,
});
