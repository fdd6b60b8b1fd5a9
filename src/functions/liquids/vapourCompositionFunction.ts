import { massFraction, presentMassFraction } from "../../inputs/kinds/shares";
import { vapourComposition, type Composition, type Elements, type VapourComposition } from "../../liquids/vapourComposition";
import { outsideFit, VAPOUR_HELD } from "../../problems/functions/liquidProblems";
import { tableFunction, type Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { CAUGHT_VAPOURS } from "./cautions";
import { COMPOSITION_LABELS as labels } from "./compositionLabels";
import { vapourRefusals, vapourTable } from "./vapourInCells";

export const vapourCompositionFunction = tableFunction({
  name: "VAPOUR.COMPOSITION",
  summary: "What left a charred feed, as a table: carbon, hydrogen and oxygen of the vapour by difference, oxygen and air to burn it, and energy.",
  inputs: {
    feedCarbon: presentMassFraction("Carbon of the dry feed [fraction]."),
    feedHydrogen: massFraction("Hydrogen of the dry feed [fraction]."),
    feedOxygen: massFraction("Oxygen of the dry feed [fraction]."),
    charCarbon: presentMassFraction("Carbon of the dry char [fraction]."),
    charHydrogen: massFraction("Hydrogen of the dry char [fraction]."),
    charOxygen: massFraction("Oxygen of the dry char [fraction]."),
    yield: presentMassFraction("Char per g of dry feed [fraction], as CHARYIELD gives it."),
  },
  result: { about: "Composition of the vapour", unit: "" },
  computeTable: (read) => table(computed(read)),
  working: (read) => steps(computed(read), read.yield),
  refusesInCells: vapourRefusals,
  inManyCells: vapourTable,
  examples: [
    {
      cell: "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0.12, 0.3)",
      gives: [
        ["Per g of each", "Dry feed", "Char", "Vapour"],
        ["Carbon", 0.5, 0.8, 0.371428571428571],
        ["Hydrogen", 0.06, 0.04, 0.0685714285714286],
        ["Oxygen", 0.42, 0.12, 0.548571428571429],
        ["Not covered: ash, nitrogen, sulfur, error", 0.02, 0.04, 0.0114285714285714],
        ["Amount [g per g dry feed]", 1, 0.3, 0.7],
        ["O2 for its clean burning [g/g]", 1.38818968772673, 2.3286868336961, 0.985119482311283],
        ["Air for it [g/g]", 5.99909113105759, 10.063469462818, 4.25721470316026],
        ["Higher heating value [MJ/kg]", 20.182, 31.4004, 15.3741142857143],
        ["Share of the feed's energy", 1, 0.466758497671192, 0.533241502328808],
        [
          "Note",
          "holds tar, liquids and gas together; the yield carries its error into every figure; vapour: oxygen outside the heating correlation",
          "",
          "",
        ],
      ],
      about: "Wood charred to 30 %: the vapour holds more than half of its energy.",
    },
  ],
  source:
    "Conservation of each element, everything that is not char counted as vapour. Burning to CO2 and H2O, dry air with 0.2314 of oxygen. Heating values: Channiwala and Parikh, Fuel 81 (2002) 1051, average error 1.45 % for fuels, without sulfur, nitrogen and ash; it was not made for vapours.",
  caution: CAUGHT_VAPOURS,
});

type Read = Readonly<Record<"feedCarbon" | "feedHydrogen" | "feedOxygen" | "charCarbon" | "charHydrogen" | "charOxygen" | "yield", number>>;

const computed = (read: Read): VapourComposition =>
  vapourComposition(
    { carbon: read.feedCarbon, hydrogen: read.feedHydrogen, oxygen: read.feedOxygen },
    { carbon: read.charCarbon, hydrogen: read.charHydrogen, oxygen: read.charOxygen },
    read.yield,
  );

const rest = ({ carbon, hydrogen, oxygen }: Elements): number => 1 - carbon - hydrogen - oxygen;

function table({ feed, char, vapour }: VapourComposition): readonly (readonly Shown[])[] {
  const row = (label: string, of: (one: Composition) => Shown): readonly Shown[] => [label, of(feed), of(char), of(vapour)];
  return [
    labels.headings,
    row(labels.carbon, ({ carbon }) => carbon),
    row(labels.hydrogen, ({ hydrogen }) => hydrogen),
    row(labels.oxygen, ({ oxygen }) => oxygen),
    row(labels.rest, rest),
    row(labels.amount, ({ amount }) => amount),
    row(labels.demand, ({ oxygenDemand }) => oxygenDemand),
    row(labels.air, ({ air }) => air),
    row(labels.heat, ({ heatingValue }) => heatingValue),
    row(labels.share, ({ energyShare }) => energyShare ?? ""),
    [labels.note, note({ feed, char, vapour }), "", ""],
  ];
}

const note = (all: VapourComposition): string =>
  [
    VAPOUR_HELD,
    ...(["feed", "char", "vapour"] as const).flatMap((name) => (all[name].outside.length === 0 ? [] : [outsideFit(name, all[name].outside)])),
  ].join("; ");

function steps(all: VapourComposition, charYield: number): readonly string[] {
  const { feed, char, vapour } = all;
  const share = inFigures(charYield);
  const line = (element: keyof Elements): string =>
    `${element} of the vapour = (${inFigures(feed[element])} - ${share} × ${inFigures(char[element])}) / (1 - ${share}) = ${inFigures(vapour[element])}`;
  return [
    line("carbon"),
    line("hydrogen"),
    line("oxygen"),
    ...(char.energyShare === undefined
      ? []
      : [
          `energy left in the char = ${share} × ${inFigures(char.heatingValue)} / ${inFigures(feed.heatingValue)} = ${inFigures(char.energyShare)} of the feed's`,
        ]),
    note(all),
  ];
}
