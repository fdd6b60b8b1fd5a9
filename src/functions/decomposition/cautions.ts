/** Said with everything that decomposes a weighed salt or mineral. */
export const DECOMPOSING =
  "Do not heat nitrates, chlorates, perchlorates, peroxides, azides or ammonium dichromate: they can burst or explode. Hydrates spit, and sulfates, oxalates and halides give off poisonous gas. Vent the vessel, heat slowly under a ducted hood. Follow your local rules; ask a qualified person.";

/** Said with lime and other calcined stone. */
export const LIME_BURNING =
  "Burning stone gives off carbon dioxide, which smothers in closed rooms and pits. Quicklime burns skin and eyes and heats violently with water: wear goggles and gloves. Follow your local kiln and air rules; ask a qualified person.";
