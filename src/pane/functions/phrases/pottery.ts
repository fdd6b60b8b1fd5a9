import type { Phrases } from "./Phrases";

export const potteryPhrases: Phrases = {
  SHRINKAGE: {
    en: [
      "shrinkage",
      "clay shrinks",
      "how much smaller after firing",
      "tile got shorter",
      "linear shrinkage",
      "drying and firing shrinkage of a pot",
    ],
    de: ["Schwindung", "Schwindmaß"],
    fr: ["retrait"],
    es: ["contracción", "encogimiento"],
  },
  ABSORPTION: {
    en: [
      "water uptake",
      "soaks up water",
      "water absorption",
      "absorbency of a fired piece",
      "does my pot hold water",
      "porosity",
      "boiled and soaked weight",
      "is my stoneware tight",
      "how much water does the tile take up",
      "vitrified",
    ],
    de: ["Wasseraufnahme"],
    fr: ["absorption d'eau", "porosité"],
    es: ["absorción de agua", "porosidad"],
  },
  "SLIP.SOLIDS": {
    en: [
      "solids in slip",
      "dry glaze in a bucket",
      "Brongniart formula",
      "pint weight",
      "specific gravity of glaze",
      "how much dry material in wet glaze",
      "casting slip density",
    ],
    de: ["Schlicker", "Trockengehalt Glasur"],
    fr: ["barbotine"],
    es: ["barbotina"],
  },
};
