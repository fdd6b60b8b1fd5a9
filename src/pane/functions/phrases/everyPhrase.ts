import { balancePhrases } from "./balance";
import { burningPhrases } from "./burning";
import { compoundPhrases } from "./compound";
import { confidencePhrases } from "./confidence";
import { decompositionPhrases } from "./decomposition";
import { dryingPhrases } from "./drying";
import { energyPhrases } from "./energy";
import { furnacePhrases } from "./furnace";
import { liquidsPhrases } from "./liquids";
import type { Phrases } from "./Phrases";
import { potteryPhrases } from "./pottery";
import { residuePhrases } from "./residue";

/** The phrases of every function. */
export const everyPhrase: Phrases = {
  ...compoundPhrases,
  ...burningPhrases,
  ...dryingPhrases,
  ...residuePhrases,
  ...decompositionPhrases,
  ...liquidsPhrases,
  ...balancePhrases,
  ...confidencePhrases,
  ...furnacePhrases,
  ...energyPhrases,
  ...potteryPhrases,
};
