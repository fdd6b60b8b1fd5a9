/** Said with everything that is heated without air. */
export const CLOSED_HEATING =
  "The vapours are toxic and flammable. Vent the vessel, work outdoors or under a ducted hood, keep flames away from the vent, and let it cool closed. Follow your local fire and gas rules; ask a qualified person.";
