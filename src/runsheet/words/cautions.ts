import type { RunKind } from "../options/RunSheetOptions";

const DRYING = [
  "Hot vessels burn: use tongs and gloves, and weigh cold. A warm vessel also reads light.",
  "Never oven-dry what is wet with solvent or fuel: its vapour can ignite.",
  "Salts with water of crystallisation spit and lose that water too: heat slowly, in a deep vessel, with eyes protected.",
];
const CHARRING = [
  "The vapours are toxic and flammable: work outdoors or under a ducted hood, beside a carbon monoxide alarm.",
  "Never seal the vessel and never block its vent. Keep flames and sparks away from the vent.",
  "Let it cool closed until it is cold: warm char can ignite by itself when air reaches it.",
  "No treated, painted or chlorinated material. No nitrates, peroxides or other oxidisers.",
];
const ASHING = ["Burning the char to ash gives off carbon monoxide: ducted hood, open vessel, nothing flammable near."];
const DEFER = ["Local codes, fire rules and the makers' instructions come first. If in doubt, ask a qualified person."];

/** What is printed on the sheet about the hurt the work can do, a line each, short enough to show without wrapping. */
export const cautions: Readonly<Record<RunKind, readonly string[]>> = {
  drying: [...DRYING, ...DEFER],
  charring: [...DRYING, ...CHARRING, ...DEFER],
  ashing: [...DRYING, ...CHARRING, ...ASHING, ...DEFER],
};

export const cautionWords = { heading: "CAUTIONS", about: "read before the first fire" } as const;
