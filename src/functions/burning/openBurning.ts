/** What stands beside every reckoning of open burning. */
export const OPEN_BURNING =
  "Reckoned for complete burning; real fires smoke and give off toxic carbon monoxide. Burn outdoors or under a ducted hood, clear of anything that catches fire. Follow your local fire and air rules; ask a qualified person.";
