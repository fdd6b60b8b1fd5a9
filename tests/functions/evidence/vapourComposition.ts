import fc from "fast-check";
import { published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { between } from "../laws/draws";
import { figureBy, law, numberBy, type Call } from "../laws/Law";

const WOOD = "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0.12, 0.3)";
const PINE = "=RETORT.VAPOUR.COMPOSITION(0.4877, 0.0613, 0.4069, 0.9119, 0.0228, 0.0365, 0.154)";

/** A char and its yield, and a feed that holds it and a vapour besides. */
const charred = fc
  .record({
    cc: between(0.6, 0.95),
    ch: between(0, 0.04),
    vc: between(0.2, 0.5),
    vh: between(0.04, 0.08),
    vo: between(0.25, 0.4),
    charYield: between(0.1, 0.6),
  })
  .map(({ cc, ch, vc, vh, vo, charYield }) => {
    const char = [cc, ch, (1 - cc - ch) / 2];
    const vapour = [vc, vh, vo];
    return { char, vapour, charYield, feed: char.map((share, index) => charYield * share + (1 - charYield) * (vapour[index] as number)) };
  });

const figure =
  (call: Call, raw: readonly unknown[]) =>
  (label: string, column: number): number =>
    figureBy(call)(label, column, "VAPOUR.COMPOSITION", ...raw);

export const evidence: FunctionEvidence = {
  name: "VAPOUR.COMPOSITION",
  answer: ["Composition of the vapour", ""],
  published: [
    ...published("worked by hand", "(0.5 - 0.3 x 0.8) / 0.7 and so on; 31.998 / 12.011 C + 31.998 / 4.032 H - O; air over 0.2314", [
      [WOOD, "0.371429", { at: ["Carbon", 3] }],
      [WOOD, "0.0685714", { at: ["Hydrogen", 3] }],
      [WOOD, "0.548571", { at: ["Oxygen", 3] }],
      [WOOD, "0.985119", { at: ["O2 for", 3] }],
      [WOOD, "4.25721", { at: ["Air for", 3] }],
      [WOOD, "vapour: oxygen outside", { at: ["Note", 1] }],
    ]),
    ...published("worked by hand", "Channiwala and Parikh, Fuel 81 (2002) 1051: 34.91 C + 117.83 H - 10.34 O; 0.3 x 31.4004 / 20.182", [
      [WOOD, "20.182", { at: ["Higher", 1] }],
      [WOOD, "31.4004", { at: ["Higher", 2] }],
      [WOOD, "0.466758", { at: ["Share of", 2] }],
      [WOOD, "0.533242", { at: ["Share of", 3] }],
    ]),
    ...published("worked by hand", "compositions printed in MaCFP matl-db, Wood/Calibration_Data/NIST/README.md; demand 2.66406 C + 7.93601 H - O", [
      [PINE, "1.3788", { at: ["O2 for", 1] }],
      [PINE, "2.5738", { at: ["O2 for", 2] }],
      [PINE, "0.410482", { at: ["Carbon", 3] }],
    ]),
  ],
  laws: [
    law("VAPOUR.COMPOSITION")("gives back the vapour that a feed was made of", (call) => {
      fc.assert(
        fc.property(charred, ({ feed, char, vapour, charYield }) => {
          const at = figure(call, [...feed, ...char, charYield]);
          ["Carbon", "Hydrogen", "Oxygen"].forEach((label, index) => expect(at(label, 3)).toBeCloseTo(vapour[index] as number, 9));
        }),
      );
    }),
    law("VAPOUR.COMPOSITION")("char and vapour together hold the feed's elements, oxygen demand and energy", (call) => {
      fc.assert(
        fc.property(charred, ({ feed, char, charYield }) => {
          const at = figure(call, [...feed, ...char, charYield]);
          for (const label of ["Carbon", "Hydrogen", "Oxygen", "Not covered", "O2 for", "Higher"])
            expect(at(label, 1)).toBeCloseTo(charYield * at(label, 2) + (1 - charYield) * at(label, 3), 9);
          expect(at("Amount", 2) + at("Amount", 3)).toBeCloseTo(1, 12);
          expect(at("Share of", 2) + at("Share of", 3)).toBeCloseTo(1, 9);
        }),
      );
    }),
    law(
      "VAPOUR.COMPOSITION",
      "OXYGENDEMAND.ULTIMATE",
      "AIRDEMAND",
    )("burns each as OXYGENDEMAND.ULTIMATE and AIRDEMAND do", (call) => {
      fc.assert(
        fc.property(charred, ({ feed, char, charYield }) => {
          const at = figure(call, [...feed, ...char, charYield]);
          const demand = numberBy(call)("OXYGENDEMAND.ULTIMATE", ...char);
          expect(at("O2 for", 2)).toBeCloseTo(demand, 9);
          expect(at("Air for", 2)).toBeCloseTo(numberBy(call)("AIRDEMAND", demand), 9);
        }),
      );
    }),
  ],
  refusals: [
    [
      "=RETORT.VAPOUR.COMPOSITION(0, 0.06, 0.42, 0.8, 0.04, 0.12, 0.3)",
      "#VALUE! feedCarbon: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
    ],
    [
      '=RETORT.VAPOUR.COMPOSITION(0.5, "some", 0.42, 0.8, 0.04, 0.12, 0.3)',
      '#VALUE! feedHydrogen: "some" is not a fraction. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.',
    ],
    [
      "=RETORT.VAPOUR.COMPOSITION(50, 6, 42, 80, 4, 12, 30)",
      "#VALUE! feedCarbon: 50 is above 1 and looks like a percentage. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
      "percentage for a fraction",
    ],
    [
      "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0.12, 0.7)",
      "#VALUE! yield: the char would hold 0.56 g of carbon, and a gram of feed brought 0.5. Check the yield, swapped analyses and one dry basis.",
      "figures that cannot all be of one sample",
    ],
    [
      "=RETORT.VAPOUR.COMPOSITION(0.8, 0.04, 0.12, 0.5, 0.06, 0.42, 0.3)",
      "#VALUE! yield: the char would hold 0.126 g of oxygen, and a gram of feed brought 0.12. Check the yield, swapped analyses and one dry basis.",
      "swapped cells",
    ],
    [
      "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0.12, 1)",
      "#VALUE! yield: 1 leaves nothing for the vapour. Give char per g of dry feed, such as 0.3 or 30%.",
    ],
    [
      "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.52, 0.8, 0.04, 0.12, 0.3)",
      "#VALUE! feedCarbon: carbon, hydrogen and oxygen of the feed sum to 1.08, above 1.02. Give one dry basis, ash and all.",
    ],
  ],
};
