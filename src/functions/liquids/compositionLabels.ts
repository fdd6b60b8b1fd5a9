/** What VAPOUR.COMPOSITION prints above its columns and before its rows. */
export const COMPOSITION_LABELS = {
  headings: ["Per g of each", "Dry feed", "Char", "Vapour"],
  carbon: "Carbon",
  hydrogen: "Hydrogen",
  oxygen: "Oxygen",
  rest: "Not covered: ash, nitrogen, sulfur, error",
  amount: "Amount [g per g dry feed]",
  demand: "O2 for its clean burning [g/g]",
  air: "Air for it [g/g]",
  heat: "Higher heating value [MJ/kg]",
  share: "Share of the feed's energy",
  note: "Note",
} as const;
