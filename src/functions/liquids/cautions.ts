/** Said with everything that condenses the vapours of charring. */
export const CAUGHT_VAPOURS =
  "Vapours and liquids of charring are toxic and flammable, and what does not condense holds carbon monoxide. Never close the line; keep flames away, work outdoors or under a ducted hood. Follow your local fire and gas rules; ask a qualified person.";

/** Said with the analysis of liquids that were caught. */
export const TITRATED_LIQUIDS =
  "Wood vinegar holds methanol, phenols and tar, and is toxic; caustic soda burns skin and eyes. Distilling it gives flammable, toxic vapour and is regulated in many places. Goggles, gloves, a hood. Follow your local rules; ask a qualified person.";
