import { COMPRESSIBILITY, DRY_AIR, ENHANCEMENT, GAS_CONSTANT, SATURATION, WATER } from "../../balance/cipm2007";
import { OIML } from "../../balance/oimlAirDensity";
import { zeroCelsius } from "../../balance/zeroCelsius";

// Each constant in brackets: a spreadsheet binds a leading minus tighter than a power.
const put = (constant: number): string => `(${String(constant).toUpperCase()})`;

/** CIPM-2007 with built-in functions; t in degC, p in Pa, h a fraction, each the text of one operand. */
export function cipmInCells(t: string, p: string, h: string): string {
  const kelvin = `(${t}+${zeroCelsius})`;
  const { A, B, C, D } = SATURATION;
  const { alpha, beta, gamma } = ENHANCEMENT;
  const saturation = `EXP(${put(A)}*${kelvin}^2+${put(B)}*${kelvin}+${put(C)}+${put(D)}/${kelvin})`;
  const vapour = `(${h}*(${alpha}+${put(beta)}*${p}+${put(gamma)}*${t}^2)*${saturation}/${p})`;
  const { a0, a1, a2, b0, b1, c0, c1, d, e } = COMPRESSIBILITY;
  const first = `(${put(a0)}+${put(a1)}*${t}+${put(a2)}*${t}^2+(${put(b0)}+${put(b1)}*${t})*${vapour}+(${put(c0)}+${put(c1)}*${t})*${vapour}^2)`;
  const z = `(1-${p}/${kelvin}*${first}+(${p}/${kelvin})^2*(${put(d)}+${put(e)}*${vapour}^2))`;
  return `${p}*${put(DRY_AIR)}/(${z}*${GAS_CONSTANT}*${kelvin})*(1-${vapour}*${put(1 - WATER / DRY_AIR)})`;
}

/** The simplified formula of OIML R 111-1 with built-in functions; arguments as above. */
export const oimlInCells = (t: string, p: string, h: string): string =>
  `(${OIML.pressure}*${p}/100-${OIML.humidity}*100*${h}*EXP(${OIML.exponent}*${t}))/(${zeroCelsius}+${t})`;
