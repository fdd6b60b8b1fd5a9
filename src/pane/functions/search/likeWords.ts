import { stem } from "./stem";

/** Words that people use for one thing; a search for one also finds the others. */
const GROUPS: readonly string[] = [
  "water moisture wet damp humidity",
  "weight mass heavy",
  "scale balance",
  "kiln furnace oven",
  "vapor smoke fumes gas volatile",
  "char charcoal biochar coke",
  "ash mineral",
  "burn combustion fire ignite",
  "steady constant finished done settled stopped",
  "reaction equation balanced stoichiometry",
  "molar molecular formula",
  "error uncertain accurate plus minus trust sure scatter ±",
  "time long duration minutes hours last",
  "big size diameter",
  "small minimum",
  "vessel pot crucible dish jar beaker lid pan",
  "mean average",
  "energy heat calorific kwh joule kilojoule",
  "percent share fraction content portion taux teneur contenido anteil gehalt",
  "result value measurement figure number",
  "replicate duplicate triplicate repeat run",
  "liquid tar distillate condense oil catch",
  "predict forecast expected",
  "theoretical expected calculated should",
  "temperature degree celsius",
  "batch group",
  "plausible normal typical usual realistic sense",
  "outlier odd suspect",
  "vent hole opening outlet chimney",
  "room workshop shed garage",
  "decompose calcine heat",
  "mixture mix blend",
  "made composition breakdown",
  "clay pot tile",
  "fast quick rate speed",
  "compare versus against difference different better",
  "drift wander creep move",
  "thermometer thermocouple pyrometer probe",
  "round digits decimals figures",
  "convert change switch",
  "pyrolysis char carbonization",
  "purge flush sweep",
  "firing schedule program programme",
  "fuel wood firewood",
];

const groups = GROUPS.map((group) => [...new Set(group.split(" ").map(stem))]);

/** The other words for a stem: "smoke" gives "vapour", "fumes" and so on, each by its stem. */
export const likeWords = (word: string): string[] =>
  groups
    .filter((group) => group.includes(word))
    .flat()
    .filter((other) => other !== word);
