import { lighterWhenSoaked, soakedTooHeavy, trayTooHeavy } from "../problems/functions/potteryProblems";

// Insulating bricks take up their own weight of water; fired clay under a third. Common practice, no source.
export const MOST_TAKEN_UP = 1.5;

/**
 * Water that a fired piece takes up, as a share of its dry mass: (M - D) / D, ASTM C373.
 * @param dry D, g, with the tray if there is one
 * @param saturated M, g, boiled or soaked and wiped, with the tray
 * @param tray g, 0 for the piece alone
 * @throws InputProblem for weighings out of order and for more water than a piece holds
 */
export function absorption(dry: number, saturated: number, tray = 0): number {
  if (tray >= dry) throw trayTooHeavy(tray, dry);
  if (saturated < dry) throw lighterWhenSoaked(saturated, dry);
  const share = (saturated - dry) / (dry - tray);
  if (share > MOST_TAKEN_UP) throw soakedTooHeavy(share, MOST_TAKEN_UP);
  return share;
}
