import type { Phrases } from "./Phrases";

export const liquidsPhrases: Phrases = {
  "PRODUCT.LEDGER": {
    en: [
      "what did I catch",
      "where did everything go",
      "mass balance of a char run",
      "char liquid and gas",
      "yield of tar and wood vinegar",
      "bio oil yield",
      "liquids caught in the receiver",
      "how much liquid condensed",
      "gas by difference",
      "unaccounted losses",
      "material balance pyrolysis",
      "distillate from wood",
    ],
    de: ["Massenbilanz", "Stoffbilanz", "Holzteer"],
    fr: ["bilan de masse", "bilan matière", "goudron"],
    es: ["balance de masa", "alquitrán"],
  },
  "VAPOUR.COMPOSITION": {
    en: [
      "what are the vapours made of",
      "composition of the smoke",
      "elements in the volatiles",
      "carbon lost in the vapour",
      "vapor composition by difference",
      "carbon and hydrogen that left",
      "air to burn the pyrolysis vapours",
      "energy in the smoke",
    ],
    de: ["Zusammensetzung der Dämpfe"],
    fr: ["composition des vapeurs"],
    es: ["composición de los vapores"],
  },
  "ACID.FROMTITRATION": {
    en: [
      "acid of wood vinegar",
      "titration with lye",
      "titrate with sodium hydroxide",
      "how acid is my vinegar",
      "acetic acid content",
      "acidity by titration",
      "pyroligneous acid strength",
      "how sour is it",
      "burette volume to acid",
    ],
    de: ["Titration", "Säuregehalt", "Holzessig"],
    fr: ["titrage", "acidité", "vinaigre de bois"],
    es: ["titulación", "valoración", "acidez", "vinagre de madera"],
  },
};
