import type { Phrases } from "./Phrases";

export const energyPhrases: Phrases = {
  "HEATINGVALUE.HIGHER": {
    en: [
      "calorific value from elemental analysis",
      "burning energy",
      "heating value",
      "higher heating value",
      "HHV",
      "gross calorific value",
      "energy content from ultimate analysis",
      "heat of burning from carbon hydrogen and oxygen",
      "how much energy is in my wood",
      "Dulong formula",
      "Channiwala Parikh",
      "MJ per kg",
    ],
    de: ["Brennwert"],
    fr: ["pouvoir calorifique supérieur", "PCS"],
    es: ["poder calorífico superior"],
  },
  "HEATINGVALUE.PROXIMATE": {
    en: [
      "heating value from proximate analysis",
      "calorific value from fixed carbon volatiles and ash",
      "energy of char from its fixed carbon",
      "HHV from ash and volatile matter",
    ],
    de: ["Brennwert aus Immediatanalyse"],
    fr: ["pouvoir calorifique d'après analyse immédiate"],
    es: ["poder calorífico según análisis inmediato"],
  },
  "HEATINGVALUE.NET": {
    en: [
      "net heating value",
      "lower heating value",
      "LHV",
      "net calorific value",
      "heat of moist wood when burned",
      "heating value of wet firewood",
      "higher to lower heating value",
    ],
    de: ["Heizwert"],
    fr: ["pouvoir calorifique inférieur", "PCI"],
    es: ["poder calorífico inferior"],
  },
  DRYINGHEAT: {
    en: [
      "heat for drying",
      "energy to dry",
      "how much energy to evaporate water",
      "kilojoules for drying a sample",
      "fuel needed to dry wood",
      "heat of evaporation",
      "power for the drying oven",
    ],
    de: ["Trocknungswärme", "Verdampfungswärme"],
    fr: ["chaleur de séchage"],
    es: ["calor de secado"],
  },
};
