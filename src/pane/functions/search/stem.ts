// Forms that no rule of endings brings together.
const IRREGULAR = new Map<string, string>(
  Object.entries({
    weigh: "weight weights weighing weighings weighed weighs wt",
    burn: "burnt burned burning burns",
    lose: "lost loss losses losing loses",
    leave: "left leaving leaves leftover",
    go: "gone goes went going",
    dry: "dried drying dries dryness drier dryer",
    shrink: "shrank shrunk shrinkage shrinks shrinking",
    moisture: "moist",
    pure: "purity",
    acid: "acidity acids sour",
    absorb: "absorption absorbency absorbs porosity porous",
    buoyancy: "buoyant",
    calcine: "calcination calcined calcining",
    decompose: "decomposition decomposes decomposing",
    combust: "combustion combusted",
    severity: "severe",
    certain: "uncertain uncertainty uncertainties certainty",
    correct: "correction corrections corrected",
    yield: "yields yielded",
    carbonize: "carbonization carbonized",
    titrate: "titration titrated titrating",
    calibrate: "calibration calibrated calibrating",
    compose: "composition compositions",
    ventilate: "ventilation",
    react: "reaction reactions",
    hydrate: "hydration",
    crystal: "crystallization crystals",
    average: "averages avg",
    deviate: "deviation stdev sd",
    condense: "condensed condenser condensate",
    ignite: "ignition ignited",
    repeat: "repeatability repeats repeated",
    heavy: "heavier",
    big: "bigger biggest large larger",
    small: "smaller smallest least",
    long: "longer",
    accurate: "accuracy precise precision exact",
    percent: "percentage percentages % pct",
  }).flatMap(([root, forms]) => forms.split(" ").map((form): [string, string] => [form, root])),
);

const HOLDS_OUR = new Set(["hour", "hours", "four", "pour", "poured", "sour", "flour"]);

/** American spelling for British: vapour, sulphur, aluminium, litre, programme, carbonise. */
export const americanSpelling = (word: string): string =>
  (HOLDS_OUR.has(word) ? word : word.replace(/our(s|ed|ing)?$/, "or$1"))
    .replace("sulph", "sulf")
    .replace("aluminium", "aluminum")
    .replace(/^haem/, "hem")
    .replace(/([lm]it|met)re(s?)$/, "$1er$2")
    .replace(/^programme/, "program")
    .replace(/is(e|ed|es|ing|ation)$/, "iz$1");

const ENDINGS = ["ings", "ing", "ies", "ied", "ers", "er", "es", "ed", "ly", "s"];
const SHORTEST_STEM = 4; // shorter stems run together: "water" and "watt"

/** A word without a common English ending, in American spelling. */
export function stem(typed: string): string {
  const word = americanSpelling(typed);
  const root = IRREGULAR.get(word);
  if (root !== undefined) return withoutE(root);
  const ending = ENDINGS.find((end) => word.endsWith(end) && word.length - end.length >= SHORTEST_STEM - (end === "s" ? 1 : 0));
  if (ending === undefined || word.endsWith("ss") || word.endsWith("us")) return withoutE(word);
  const cut = word.slice(0, -ending.length);
  if (ending === "ies" || ending === "ied") return `${cut}y`;
  const bare = /([bdgmnprt])\1$/.test(cut) && ending !== "s" ? cut.slice(0, -1) : cut;
  return IRREGULAR.get(bare) ?? withoutE(bare);
}

const withoutE = (word: string): string => (word.length > SHORTEST_STEM && word.endsWith("e") ? word.slice(0, -1) : word);
