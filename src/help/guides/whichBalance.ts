import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

export const whichBalance: Guide = {
  file: "guide-which-balance-do-i-need",
  title: "Which balance do I need",
  scene: "The numbers are invented: the orchard wants its char yield to half a percentage point, 0.005.",
  cautions: ["Mind the heat: weigh cold. A warm vessel reads light and scorches a balance.", DEFER],
  steps: [
    {
      text: "What one reading is uncertain by, from the display step alone: a step of 0.01 g, evenly spread, is half a step over √3.",
      byHand: "0.01 / √12 = 0.01 / 3.4641 = 0.002887 g",
      cell: "=RETORT.READING.U(0.01)",
      gives: 0.002887,
    },
    {
      text: "Weighing the same thing again scatters too, here by 0.01 g; both add as squares.",
      byHand: "√(0.002887² + 0.01²) = √(0.00000833 + 0.0001) = 0.010408 g",
      cell: "=RETORT.READING.U(0.01, 0.01)",
      gives: 0.010408,
    },
    {
      text: "How much sample makes this good enough, at the usual k = 2 and an expected loss of 0.3.",
      byHand: "2 × 0.01 / 0.005 × √(0.7² + 1 + 0.3²) = 4 × √1.58 = 4 × 1.2570 = 5.03 g",
      cell: "=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 0.3)",
      gives: 5.028,
    },
    { text: "With 10 g this balance will do; with 1 g you need one that shows 0.001 g. Check yours with a weight before you buy another." },
  ],
  sheet: { kind: "balance", label: "Balance check", typed: {} },
};
