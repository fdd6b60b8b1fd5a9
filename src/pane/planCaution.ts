import type { RunKind } from "../runsheet/options/RunSheetOptions";

const DEFER = "Local codes, fire rules and the makers' instructions set the limit, not this plan.";
const HEATED =
  "A larger sample gives off more toxic, flammable vapour, and faster. Vessel, vent and hood must be made for that much; if they are not, take a finer balance or a wider uncertainty. ";

/** What a large sample brings with it, said where its size is planned. */
export const planCaution: Readonly<Record<RunKind, string>> = {
  drying: `A larger sample gives off more vapour and dries more slowly. Spread it thin, keep the oven's vent open, and do not overfill the oven. ${DEFER}`,
  charring: HEATED + DEFER,
  ashing: HEATED + DEFER,
};
