/** Said with everything that is heated without air. */
export const CLOSED_HEATING =
  "The vapours are toxic and flammable. Vent the vessel, work outdoors or under a ducted hood, keep flames away from the vent, and let it cool closed. Follow your local fire and gas rules; ask a qualified person.";

/** Said with everything that is burnt to ash or ignited in air. */
export const OPEN_IGNITION =
  "Ignition gives off carbon monoxide and smoke, and crucibles stay hot for long. Heat slowly so that nothing flares up or spits, under a ducted hood, and handle with tongs. Follow your local fire and gas rules; ask a qualified person.";
