// What --help says of the options of a run sheet, and what is said beside one in plain cells.

export const notANumber = "Give a number, with a point before decimals.";

export const sheetHelp = {
  about: "Makes a blank run sheet, chart included.",
  plainCells: "in built-in functions alone, so that any spreadsheet program calculates it without the add-in",
  kind: "what is done to the sample",
  weighIns: "rounds of weighing while drying, or of a check weight",
  interval: "planned minutes between weighings",
  readability: "the balance's smallest display step, g",
  vessel: 'what the vessel is called: "lidded tin"',
  replicates: "samples run side by side",
  oven: "oven temperature, °C (default: a box to fill in)",
  panZeros: "note the balance's zero before and after each round",
  temperatures: "note the temperatures of room and sample at each round",
  charFirings: "times that the char is fired and weighed",
  ashFirings: "times that the ash is fired and weighed",
  receivers: "receivers that liquids are caught in",
  stages: "stages of staged heating",
  formula: "salt: what is heated, CuSO4.5H2O; charring, ashing: what burns, C6H10O5 (default: a box to fill in)",
  residue: "salt: what is to be left of it, CuSO4 (default: a box to fill in)",
  samplesAre: "whether samples side by side are one material",
  degrees: "the unit of temperatures on the sheet",
  timing: "rounds by the clock or in minutes since the first",
  moistGrams: "from a plan, with --wanted-uncertainty: moist sample in each vessel, g",
  dryGrams: "from a plan: what is to be left of it when dry, g, of a run that goes on after drying",
  wantedUncertainty: "from a plan, with --moist-grams: wanted uncertainty, a fraction",
  repeatability: "from a plan: the balance's repeatability, g",
  methodScatter: "from a plan: scatter of the method, a fraction",
  vesselMaterial: "from a plan: what the vessel is made of",
  kilnSetPoint: "from a plan: what the kiln is set to, in the degrees of the sheet",
  heatingRate: "from a plan: how fast the kiln heats, degrees of the sheet a minute",
  holdMinutes: "from a plan: how long it is held hot, min",
  coolingHours: "from a plan: how long the vessel stays closed till it is cold, h",
  expectedLoss: "from a plan: what leaves as vapour, a fraction of the dry sample",
  molarMass: "from a plan: mean of the vapour, g/mol",
  expectedMoisture: "from a plan: water, a fraction of the moist sample",
  dryingHours: "from a plan: until dry, h",
  bulkDensity: "from a plan: of the moist sample as it lies, g/mL",
  beginAt: "from a plan: when to begin, 9:30",
  examples: [
    "retort sheet --kind drying -o run.xlsx",
    'retort sheet --kind charring --replicates 3 --vessel "lidded tin" --readability 0.01 -o run.xlsx --plain-cells',
    "retort sheet --kind salt --formula CuSO4.5H2O --residue CuSO4 -o bluestone.xlsx",
  ],
} as const;

export const optionOfOtherKinds = (option: string, kind: string, kinds: readonly string[]): string =>
  `${option} is for --kind ${kinds.join(", ")}; a sheet of the kind ${kind} has no place for it. Leave it out, or choose another kind.`;

export const onlyWithAddIn = (functions: readonly string[]): string =>
  `${functions.join(", ")}: only with the add-in. Cells that need it show no answer.`;

export const planIncomplete = (option: string): string =>
  `${option} is from a plan, and every plan has --moist-grams and --wanted-uncertainty. Give both, or leave it out.`;
