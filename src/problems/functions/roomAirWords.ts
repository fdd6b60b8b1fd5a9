/** Said with every mean of a room. */
export const IDEAL_MIXING =
  "optimistic: the gas is taken as spread through the whole room at once; beside the source, under the ceiling and in corners there is more, by how much nobody can reckon from this";

/** Occupational limits as their sources print them, in ppm; text, because which one holds is a matter of place and law. */
export const EXPOSURE_LIMITS: readonly (readonly [gas: string, limits: string])[] = [
  [
    "carbon monoxide",
    "OSHA PEL 50 ppm, NIOSH REL 35 ppm with a ceiling of 200 ppm, ACGIH TLV 25 ppm, each over 8 h but the ceiling; IDLH 1200 ppm (OSHA chemical data, carbon monoxide)",
  ],
  [
    "methanol",
    "OSHA PEL 200 ppm, NIOSH REL 200 ppm with a STEL of 250 ppm, taken up through the skin as well; IDLH 6000 ppm (NIOSH, IDLH value of methanol)",
  ],
  ["carbon dioxide", "OSHA PEL 5000 ppm, NIOSH STEL 30000 ppm; IDLH 40000 ppm (from memory)"],
];

export const LIMITS_DIFFER =
  "limits differ by country and change: defer to your local codes and to licensed practice; they are for healthy workers in a working day, and no figure here permits anything";
