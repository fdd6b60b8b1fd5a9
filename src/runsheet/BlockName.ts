/** A part of a sheet below its head, with rows of its own. */
export type BlockName =
  | ("setup" | "drying" | "charring" | "ashing" | "caught" | "stages" | "end" | "cautions")
  // Of a salt or mineral.
  | ("compound" | "heating")
  | ("results" | "checks" | "settings" | "openFire" | "curves" | "materials")
  // Of a balance check.
  | ("weight" | "rounds" | "corners" | "notes" | "performance");
