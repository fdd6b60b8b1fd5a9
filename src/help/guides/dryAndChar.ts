import { DEFER } from "./cautions";
import type { Guide } from "./Guide";

export const dryAndChar: Guide = {
  file: "guide-dry-and-char",
  title: "Dry and char a sample",
  scene: "The numbers are invented: prunings of a community orchard, in a lidded steel pot of 25.00 g, on a balance that shows 0.01 g.",
  cautions: [
    "The vapours of charring are toxic and flammable, carbon monoxide among them: work outdoors or under a ducted hood, with a carbon monoxide alarm, no flame at the vent. Never seal the pot.",
    "Let the char cool closed until it is cold: warm char can catch fire in air.",
    DEFER,
  ],
  steps: [
    {
      text: "Weigh the empty pot (25.00 g), then with the moist prunings (35.00 g). Dry at 105 °C and weigh cold until it holds: 31.50 g. The moisture is the water per gram of moist sample.",
      byHand: "(35.00 - 31.50) / (35.00 - 25.00) = 3.50 / 10.00 = 0.35",
      cell: "=RETORT.MOISTURE.WET(25, 35, 31.5)",
      gives: 0.35,
    },
    {
      text: "Is it dry? Type the weighings of the dry-down in a column. The answer is the number of the weighing from which the weight held; 0 means not yet.",
      byHand: "last change 31.51 - 31.50 = 0.01 g; limit of a thousandth of the 6.50 g sample = 0.0065 g: it moved more, so not yet",
      cell: '=RETORT.CONSTANTWEIGHT({33; 31.8; 31.51; 31.5}, 0.001, "", "", 25)',
      gives: 0,
    },
    {
      text: "Weigh once more, and it shows 31.50 g again: dry. Now lid on, char until no more smoke comes, cool closed, weigh: 26.95 g. The char yield is char per gram of dry sample.",
      byHand: "(26.95 - 25.00) / (31.50 - 25.00) = 1.95 / 6.50 = 0.30",
      cell: "=RETORT.CHARYIELD(25, 31.5, 26.95)",
      gives: 0.3,
    },
    {
      text: "What went off as vapour is the rest.",
      byHand: "(31.50 - 26.95) / 6.50 = 4.55 / 6.50 = 0.70",
      cell: "=RETORT.VOLATILEFRACTION(25, 31.5, 26.95)",
      gives: 0.7,
    },
  ],
  sheet: { kind: "charring", label: "Drying and charring", typed: { vessel: "lidded steel pot", ovenCelsius: "105" } },
};
