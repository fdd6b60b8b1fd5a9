/** What stands beside every reckoning of open burning. */
export const OPEN_BURNING =
  "Reckoned for complete burning; real fires smoke and give off toxic carbon monoxide. Burn outdoors or under a ducted hood, clear of anything that catches fire. Follow your local fire and air rules; ask a qualified person.";

/** For formulas that may carry their own oxygen. */
export const OXIDISERS =
  "Oxygen to spare (a negative demand, O2 on the right) can mark an oxidiser: with anything that burns it can catch fire or explode. Nitro compounds, azides and peroxides can explode whatever the answer. Do not heat them. Follow your local rules; ask a qualified person.";

/** Said where charring and open burning stand side by side. */
export const CLOSED_AND_OPEN =
  "Charring gives off toxic, flammable vapours and burning gives off carbon monoxide. Vent the vessel, work outdoors or under a ducted hood, let it cool closed. Follow your local fire and gas rules; ask a qualified person.";
