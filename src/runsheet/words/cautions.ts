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
const LIQUIDS = [
  "Condensed liquids are flammable and toxic, tar among them: gloves, eye protection, closed labelled bottles, no flame near, never a drain.",
  "Keep the gas path open from vessel to outlet: tar or a full receiver blocks it. Lead what gas is left outdoors, away from any flame.",
  "A cooling vessel draws back: keep the outlet above the liquid, and let neither liquid nor air reach hot char.",
  "Distilling the liquids is flammable, toxic and regulated: it is no part of this run. Ask what is allowed before you begin.",
];
const STAGED = [
  "Know what leaves at each stage before you heat: some salts give off acid, toxic or flammable gas. Work under a ducted hood.",
  "Never seal the vessel: gas and steam must find a way out. Let it cool covered or in a desiccator, then weigh.",
  "No nitrates, peroxides, perchlorates, ammonium salts of oxidisers, cyanides, azides or unknown powders.",
];
const SALT = [
  "No nitrates, chlorates, perchlorates, peroxides, azides, cyanides, ammonium salts of oxidisers, mercury salts or unknown powders.",
  "Hydrates spit: fill a third at most, warm slowly, lid ajar. Overheated sulfates give off sulfur trioxide, which burns the lungs.",
  "Carbonates give off carbon dioxide: air the room well. Quicklime burns skin and eyes, and boils up with water: goggles, gloves.",
  "Never seal the crucible. Let it cool closed in a desiccator, then weigh soon: dry salts and quicklime take up damp.",
];
const BALANCE = [
  "A check is no calibration: trade, medicine and law have rules of their own, and they come first.",
  "Handle check weights with tweezers or clean gloves, never by hand: grease is weight. Heavy ones: mind back and toes.",
  "Let weight and balance stand beside each other until they are as warm as the room; level the balance, keep draughts off.",
];
const DEFER = ["Local codes, fire rules and the makers' instructions come first. If in doubt, ask a qualified person."];

/** What is printed on the sheet about the hurt the work can do, a line each, short enough to show without wrapping. */
export const cautions: Readonly<Record<RunKind, readonly string[]>> = {
  drying: [...DRYING, ...DEFER],
  charring: [...DRYING, ...CHARRING, ...DEFER],
  ashing: [...DRYING, ...CHARRING, ...ASHING, ...DEFER],
  liquids: [...DRYING, ...CHARRING, ...LIQUIDS, ...DEFER],
  staged: [...DRYING, ...STAGED, ...DEFER],
  salt: [...DRYING, ...SALT, ...DEFER],
  balance: [...BALANCE, ...DEFER],
};

const TOXIC = "Vapours are toxic and flammable: outdoors or ducted hood, CO alarm, vent never blocked.";

/** The least of them, in a line, where the work is done. */
export const briefCaution: Readonly<Record<RunKind, string>> = {
  drying: "Hot vessels burn: tongs, gloves. Never oven-dry what is wet with solvent or fuel.",
  charring: TOXIC,
  ashing: TOXIC,
  liquids: TOXIC,
  staged: "Ducted hood, vessel never sealed, no oxidisers, no unknown powders.",
  salt: "Hydrates spit: goggles, gloves. Crucible never sealed, no oxidisers, no unknown powders.",
  balance: "A check is no calibration. Tweezers or clean gloves.",
};

/** At the top of every page of a sheet that grew until its cautions came to stand on a later one. One line, at most 140 characters. */
export const cautionLine = Object.fromEntries(
  Object.entries(briefCaution).map(([kind, brief]) => [kind, `CAUTIONS stand on a later page: read them first. ${brief}`]),
) as Readonly<Record<RunKind, string>>;

export const cautionWords = { heading: "CAUTIONS", about: "read before the first fire" } as const;
