/** Said with everything that condenses the vapours of charring. */
export const CAUGHT_VAPOURS =
  "Vapours and liquids of charring are toxic and flammable, and what does not condense holds carbon monoxide. Never close the line; keep flames away, work outdoors or under a ducted hood. Follow your local fire and gas rules; ask a qualified person.";
