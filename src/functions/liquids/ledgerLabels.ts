/** What PRODUCT.LEDGER prints above its columns, and before its rows. */
export const HEADINGS = ["Ledger", "Mass [g]", "g per g dry feed"] as const;

export const LABELS = {
  feed: "Feed as weighed",
  feedWater: "of it water",
  dryFeed: "Dry feed",
  char: "Char",
  liquids: "Liquids caught",
  inLiquids: "of them water",
  formed: "Water formed",
  made: "Liquids less feed water",
  measured: "Gas, measured",
  byDifference: "Gas, by difference: holds every leak",
  products: "Products together",
  unaccounted: "Unaccounted",
  uncertainty: "its standard uncertainty",
  verdict: "Verdict",
} as const;
