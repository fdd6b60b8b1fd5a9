/** Words of the list of vessel materials at the foot of the sheet. */
export const materialWords = {
  heading: "VESSELS",
  column: (unit: "C" | "F"): string => `To °${unit}`,
  source: "what they stand, and by what source",
  note: "For a sound vessel, heated and cooled slowly. The maker's own figure comes first; molten salts, alkali and reducing gas lower it.",
} as const;
