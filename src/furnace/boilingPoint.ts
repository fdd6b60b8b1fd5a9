import { ZERO_CELSIUS } from "./gasVolume";

/** IAPWS-IF97, table 34: coefficients n1 to n10 of the saturation line, region 4. */
export const SATURATION_LINE = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7, 0.1491510861353e2, -0.48232657361591e4,
  0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;
const PASCALS = 1e6;

/** The steps of the backward equation: beta = (p / 1 MPa)^(1/4), and the three quadratics in it. */
export function saturationSteps(pressure: number): Readonly<Record<"beta" | "e" | "f" | "g" | "d" | "kelvin", number>> {
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION_LINE;
  const beta = Math.pow(pressure / PASCALS, 1 / 4);
  const e = beta * beta + n3 * beta + n6;
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const kelvin = (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
  return { beta, e, f, g, d, kelvin };
}

/**
 * Temperature at which pure water boils, degC: IAPWS-IF97, equation 31, the backward equation of the saturation line, for 611.213 Pa to
 * 22.064 MPa. On the scale of 1990; better than 0.01 degC where thermometers are checked.
 * @param pressure Pa
 */
export const boilingPoint = (pressure: number): number => saturationSteps(pressure).kelvin - ZERO_CELSIUS;
