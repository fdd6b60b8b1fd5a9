/** A part of a sheet below its head, with rows of its own. */
export type BlockName =
  ("setup" | "drying" | "charring" | "ashing" | "end" | "cautions") | ("results" | "checks" | "settings" | "openFire" | "curves" | "materials");
