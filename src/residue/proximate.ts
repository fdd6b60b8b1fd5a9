import { driedInOrder } from "../weighing/weighingsInOrder";
import { weighedRun } from "./weighedRun";

/** The four shares of a proximate analysis, fractions of one sample. */
export interface ProximateShares {
  readonly moisture: number;
  readonly volatileMatter: number;
  readonly fixedCarbon: number;
  readonly ash: number;
}

/**
 * Proximate analysis of one sample kept in one vessel: dried, charred without air, then burnt to ash. Over the sample as
 * received, moist - vessel, and over the dry one, dry - vessel: moisture (moist - dry), volatile matter (dry - char),
 * fixed carbon (char - ash), ash (ash - vessel). Every gram is counted once, so the four shares sum to 1 whatever was
 * weighed, and none is got by difference. ASTM D3172 to D3175, ISO 17246 (from memory).
 * @param vessel, moist, dry, char, ash weighings with the vessel, g
 * @throws InputProblem when the weighings are not in the order vessel <= ash <= char <= dry <= moist, vessel < dry
 */
export function proximate(vessel: number, moist: number, dry: number, char: number, ash: number): Record<"asReceived" | "dry", ProximateShares> {
  driedInOrder(vessel, moist, dry);
  const net = weighedRun(vessel, dry, char, ash);
  const per = (sample: number, water: number): ProximateShares => ({
    moisture: water / sample,
    volatileMatter: (dry - char) / sample,
    fixedCarbon: (char - ash) / sample,
    ash: net.ash / sample,
  });
  return { asReceived: per(moist - vessel, moist - dry), dry: per(net.dry, 0) };
}
