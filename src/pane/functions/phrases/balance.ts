import type { Phrases } from "./Phrases";

export const balancePhrases: Phrases = {
  ZERODRIFT: {
    en: [
      "does my scale drift",
      "does my balance drift",
      "zero drift",
      "zero has moved",
      "pan zero before and after",
      "empty scale no longer shows zero",
      "scale does not return to zero",
      "correct a reading for drift",
      "balance creeps",
    ],
    de: ["Nullpunktdrift", "Waage driftet"],
    fr: ["dérive du zéro", "balance dérive"],
    es: ["deriva del cero", "balanza deriva"],
  },
  BLANKCORRECTED: {
    en: [
      "blank correction",
      "empty crucible loses weight too",
      "loss of the vessel itself",
      "correct for the blank",
      "blank run",
      "subtract what the empty vessel lost",
      "dish gained weight in the furnace",
    ],
    de: ["Blindwert", "Leerversuch"],
    fr: ["essai à blanc"],
    es: ["ensayo en blanco"],
  },
  AIRDENSITY: {
    en: [
      "air density",
      "density of air",
      "how heavy is the air",
      "weight of a cubic metre of air",
      "air at my room temperature pressure and humidity",
    ],
    de: ["Luftdichte"],
    fr: ["densité de l'air", "masse volumique de l'air"],
    es: ["densidad del aire"],
  },
  BUOYANCY: {
    en: [
      "buoyancy",
      "air buoyancy correction",
      "lift of the air",
      "true mass in vacuum",
      "weighing corrected for displaced air",
      "conventional mass to true mass",
    ],
    de: ["Auftrieb", "Luftauftrieb"],
    fr: ["poussée de l'air", "poussée d'Archimède"],
    es: ["empuje del aire", "flotabilidad"],
  },
  HOTWEIGHING: {
    en: [
      "weighed hot",
      "weighing a warm crucible",
      "still warm on the scale",
      "can I weigh it hot",
      "hot vessel reads light",
      "how long to cool before weighing",
      "error of weighing warm",
    ],
    de: ["heiß gewogen", "warm gewogen"],
    fr: ["pesée à chaud"],
    es: ["pesada en caliente"],
  },
};
