import { dryAndChar } from "./dryAndChar";
import type { Guide } from "./Guide";
import { hydrateWater } from "./hydrateWater";
import { limeBurntThrough } from "./limeBurntThrough";
import { whatDidICatch } from "./whatDidICatch";
import { whatMyKilnGivesOff } from "./whatMyKilnGivesOff";
import { whichBalance } from "./whichBalance";

/** Every worked page, in the order of the contents. */
export const everyGuide: readonly Guide[] = [dryAndChar, hydrateWater, limeBurntThrough, whatDidICatch, whichBalance, whatMyKilnGivesOff];
