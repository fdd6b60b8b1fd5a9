import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

const LEDGER = "=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75)";

export const whatDidICatch: Guide = {
  file: "guide-what-did-i-catch",
  title: "What did I catch",
  scene: "The numbers are invented: the orchard chars 200 g of prunings with moisture 0.125 and leads the vapour through a cooled receiver.",
  cautions: [
    "What condenses is flammable and toxic, tar among it: gloves, eye protection, closed labelled bottles, no flame near, never a drain.",
    "Keep the gas path open from vessel to outlet: tar blocks it. Lead the gas that is left outdoors, away from any flame.",
    DEFER,
  ],
  steps: [
    {
      text: "First the dry feed: what was weighed in, without its water.",
      byHand: "200 × (1 - 0.125) = 175 g",
      cell: LEDGER,
      row: "Dry feed",
      gives: 175,
    },
    {
      text: "Char weighed cold: 50 g. Receiver full less empty: 75 g, of which some is the water the wood brought along.",
      byHand: "200 × 0.125 = 25 g",
      cell: LEDGER,
      row: "of it water",
      gives: 25,
    },
    {
      text: "Nobody weighed the gas. All that is neither char nor liquid is gas, loss and error together; do not call it gas.",
      byHand: "200 - 50 - 75 = 75 g",
    },
  ],
  sheet: { kind: "liquids", label: "Charring with liquids caught", typed: { vessel: "retort pot" } },
};
