import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

export const hydrateWater: Guide = {
  file: "guide-water-in-a-hydrate",
  title: "Water in a hydrate",
  scene: "The numbers are invented: a salts class heats bluestone in a crucible of 20.00 g, on a balance that shows 0.01 g.",
  cautions: [
    "Hydrates spit when heated fast: heat slowly in a deep crucible, eyes protected. Copper sulfate harms when swallowed and must not reach a drain.",
    "Above about 600 °C the sulfate itself gives off poisonous gas: stay far below, under a hood.",
    DEFER,
  ],
  steps: [
    {
      text: "Weigh the crucible (20.00 g), with the blue salt (25.00 g), and heated to constant weight, white (23.20 g). The water lost is a share of the hydrate.",
      byHand: "(25.00 - 23.20) / (25.00 - 20.00) = 1.80 / 5.00 = 0.36",
      cell: '=RETORT.HYDRATEWATER(20, 25, 23.2, "CuSO4")',
      row: "Water lost, share of the hydrate",
      gives: 0.36,
    },
    {
      text: "Divide moles of water by moles of the salt that is left.",
      byHand: "(1.80 / 18.015) / (3.20 / 159.602) = 0.09992 / 0.02005 = 4.983",
      cell: '=RETORT.HYDRATEWATER(20, 25, 23.2, "CuSO4")',
      row: "Water per formula, n",
      gives: 4.983,
    },
    {
      text: "The nearest whole number is 5: copper sulfate pentahydrate. Its water by the formula, to compare:",
      byHand: "5 × 18.015 / 249.677 = 0.3608",
      cell: '=RETORT.MASSFRACTION("CuSO4.5H2O", "H2O")',
      gives: 0.3608,
    },
  ],
  sheet: { kind: "salt", label: "Salt or mineral", typed: { vessel: "crucible", formula: "CuSO4·5H2O", residue: "CuSO4" } },
};
