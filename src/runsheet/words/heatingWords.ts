import { text, type Expression } from "../expressions/Expression";
import { optionBounds } from "../options/optionBounds";
import { celsiusWords, clockWords, massWords, type BoxWords } from "./BoxWords";

const { kiln } = optionBounds;

/** Words of charring and ashing: the boxes of what is noted, and the caution beside a temperature. */
export const heatingWords = {
  kilnSet: celsiusWords("Kiln set (°C)", "Kiln set", "The temperature the kiln is set to. In degrees Celsius.", kiln),
  started: clockWords("Heating started (clock)", "Heating started", "When the kiln was switched on, vessel closed and vent open."),
  smokeStopped: clockWords("Vent stopped smoking (clock)", "Vent stopped smoking", "When no more vapour was seen at the vent."),
  cooled: clockWords("Cold, vessel opened (clock)", "Cold, vessel opened", "When the vessel, cooled closed, was cold and was opened."),
  char: (readability: number): BoxWords =>
    massWords(
      "Vessel + char (g)",
      "Vessel + char",
      "The same vessel and lid with the char, cold. Weigh soon: char takes up water from the air.",
      readability,
    ),
  furnaceSet: celsiusWords(
    "Ashing furnace set (°C)",
    "Ashing furnace set",
    "The temperature at which the char is burned to ash. In degrees Celsius.",
    kiln,
  ),
  ash: (readability: number): BoxWords =>
    massWords("Vessel + ash (g)", "Vessel + ash", "The same vessel and lid with the ash, cold, once no dark specks are left.", readability),
  /** Lines of the balance's zero around a weighing, and the mass that follows. */
  zeros: {
    char: { before: "Pan zero before char (g)", after: "Pan zero after char (g)", corrected: "Vessel + char, drift-corrected (g)" },
    ash: { before: "Pan zero before ash (g)", after: "Pan zero after ash (g)", corrected: "Vessel + ash, drift-corrected (g)" },
  },
  overheated: (celsius: Expression, material: Expression) => text`Caution: above the ${celsius} °C that ${material} stands`,
} as const;
