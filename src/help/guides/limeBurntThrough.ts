import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

export const limeBurntThrough: Guide = {
  file: "guide-is-my-lime-burnt-through",
  title: "Is my lime burnt through",
  scene: "The numbers are invented: the orchard burns limestone for whitewash and ignites a sample of the stone and one of the burnt lime.",
  cautions: [
    "Burning stone gives off carbon dioxide, which smothers in closed rooms and pits.",
    "Quicklime burns skin and eyes and heats violently with water: goggles and gloves, and never add water to test it.",
    DEFER,
  ],
  steps: [
    {
      text: "What pure limestone can lose at most is its carbon dioxide.",
      byHand: "44.009 / 100.086 = 0.4397",
      cell: '=RETORT.THEORETICALLOSS("CaCO3", "CaO")',
      gives: 0.4397,
    },
    {
      text: "Ignite dry raw stone at 1000 °C: crucible 30.00 g, with stone 35.00 g, after 32.90 g. This is the loss of your own stone, which is what counts.",
      byHand: "(35.00 - 32.90) / (35.00 - 30.00) = 2.10 / 5.00 = 0.42",
      cell: "=RETORT.LOSSONIGNITION(30, 35, 32.9)",
      gives: 0.42,
    },
    {
      text: "So much of the stone is carbonate, if nothing else in it loses weight.",
      byHand: "0.42 / 0.4397 = 0.955",
      cell: '=RETORT.PURITY.FROMLOSS(0.42, "CaCO3", "CaO")',
      gives: 0.955,
    },
    {
      text: "Ignite the burnt lime alike, fresh from the kiln: it still loses 0.05. The degree of calcination compares both on the weight of what stays.",
      byHand: "1 - 0.05 × (1 - 0.42) / (0.42 × (1 - 0.05)) = 1 - 0.029 / 0.399 = 0.927",
      cell: "=RETORT.CALCINATION.DEGREE(0.05, 0.42)",
      gives: 0.927,
    },
    {
      text: "It is not burnt through: 7 of 100 parts of what could leave are still there. Lime that has lain in air takes up water and carbon dioxide and looks the same: weigh it fresh.",
    },
  ],
  sheet: { kind: "salt", label: "Salt or mineral", typed: { vessel: "crucible", formula: "CaCO3", residue: "CaO" } },
};
