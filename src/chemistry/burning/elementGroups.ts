export const HALOGENS: readonly string[] = ["F", "Cl", "Br", "I"];
export const ALKALI_METALS: readonly string[] = ["Li", "Na", "K"];
export const NOBLE_GASES: readonly string[] = ["He", "Ne", "Ar", "Kr", "Xe", "Rn"];
