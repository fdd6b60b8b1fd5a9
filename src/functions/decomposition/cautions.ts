/** Said with everything that decomposes a weighed salt or mineral. */
export const DECOMPOSING =
  "Do not heat nitrates, chlorates, perchlorates, peroxides, azides or ammonium dichromate: they can burst or explode. Hydrates spit, and sulfates, oxalates and halides give off poisonous gas. Vent the vessel, heat slowly under a ducted hood. Follow your local rules; ask a qualified person.";
