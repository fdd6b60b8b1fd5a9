import { runInNewContext } from "node:vm";

/** What a line of working says is equal. */
export interface Equation {
  readonly line: string;
  readonly left: number;
  readonly right: number;
  readonly largest: number;
}

const NUMBER = /-?\d[\d.]*(?:e-?\d+)?/g;
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/^the larger of (\S+) and (\S+)$/, "Math.max($1,$2)"],
  [/^the smaller of (\S+) and (\S+)$/, "Math.min($1,$2)"],
  [/^(\S+) to (\d+) decimals$/, "Math.round($1*10**$2)/10**$2"],
  [/^whole part of (\S+)$/, "Math.floor($1)"],
  [/^remainder of (\S+) by (\S+)$/, "(($1%$2)+$2)%$2"],
];

/** The value of arithmetic as a line has it; undefined of anything else. */
export function valueOf(text: string): number | undefined {
  const words = SIGNS.find(([pattern]) => pattern.test(text));
  const code = (words === undefined ? text : text.replace(words[0], words[1]))
    .replace(/\|([^|]+)\|/g, "Math.abs($1)")
    .replaceAll("×", "*")
    .replaceAll("^", "**")
    .replaceAll("sqrt", "Math.sqrt");
  const isPlain = words !== undefined || /^[\d.e+\-*/() ]+$/.test(code.replaceAll("Math.sqrt", "").replaceAll("Math.abs", ""));
  if (!isPlain || !/\d/.test(code)) return undefined;
  return Number(runInNewContext(code.replace(/\(-([\d.e-]+)\)\*\*/g, "((-$1))**")));
}

/** Each `3.5 / 10 = 0.35` of a line; its last side may go on with a unit or how it is written. */
export function equationsIn(line: string): Equation[] {
  const sides = line.split(" = ");
  return sides.slice(1).flatMap((side, index) => {
    const before = sides[index] ?? "";
    const [left, right] = [valueOf(before), Number(/^-?\d[\d.]*(?:e-?\d+)?/.exec(side)?.[0])];
    if (left === undefined || Number.isNaN(right)) return [];
    const terms = (before.match(NUMBER) ?? []).map((one) => Math.abs(Number(one)));
    return [{ line, left, right, largest: Math.max(Math.abs(right), ...(/ [+-] /.test(before) ? terms : [0])) }];
  });
}

// Seven figures are shown, so a result is known to a few units of the seventh figure of its largest term.
const SHOWN = 4e-6;

export const isRight = ({ left, right, largest }: Equation): boolean => Math.abs(left - right) <= SHOWN * Math.max(largest, 1e-12);
