/** Said where charring and open burning stand side by side. */
export const CLOSED_AND_OPEN =
  "Charring gives off toxic, flammable vapours and burning gives off carbon monoxide. Vent the vessel, work outdoors or under a ducted hood, let it cool closed. Follow your local fire and gas rules; ask a qualified person.";
