import { CIAAW_2021 } from "./ciaaw2021";

/** One element of the printed table, its value as a number. */
export interface PrintedLine {
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  readonly limit: number;
  /** "[low,high]", "" where there is none. */
  readonly interval: string;
}

/** "4.002602(2)" has the limit 0.000002; one with a point, "207.2(1.1)", stands as it is. */
function limitIn(printed: string): number {
  const { decimals = "", digits = "" } = /^\d+(?:\.(?<decimals>\d+))?\((?<digits>[\d.]+)\)$/.exec(printed)?.groups ?? {};
  return digits.includes(".") ? Number(digits) : Number(`${digits}e-${decimals.length}`);
}

export const everyLine: readonly PrintedLine[] = CIAAW_2021.map(([symbol = "", name = "", printed = "", interval = ""]) => ({
  symbol,
  name,
  value: Number(printed.replace(/\(.*$/, "")),
  limit: limitIn(printed),
  interval,
}));

const limits = new Map(everyLine.map(({ symbol, limit }) => [symbol, limit]));

/** The limit printed beside the value of an element. */
export const printedLimit = (symbol: string): number => limits.get(symbol) ?? NaN;
