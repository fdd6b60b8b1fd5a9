import type { BalanceSheet } from "../../runsheet/sheet/BalanceSheet";
import { balanceWords } from "../../runsheet/words/balance/balanceWords";
import type { ShownCells } from "../sheet/ShownCells";
import type { Chart, Line, Point } from "./Chart";

const POINTS_FOR_A_LINE = 2;

/** The check weight round by round, and the lines that it should lie between. */
export function balanceChart({ rows, round, working }: BalanceSheet, shown: ShownCells): readonly Chart[] {
  const { first, last } = rows.rounds;
  const words = balanceWords.chart;
  const points = Array.from({ length: last - first + 1 }, (_, index) => index).flatMap((index): Point[] => {
    const grams = shown.number(round(first + index).reading);
    return grams === undefined ? [] : [{ x: index + 1, y: grams }];
  });
  if (points.length < POINTS_FOR_A_LINE) return [];
  const to = points.at(-1)?.x ?? 1;
  const level = (of: "low" | "mean" | "high"): number | undefined => {
    const at = working.limits[0]?.[of];
    return at === undefined ? undefined : shown.number(at);
  };
  const line = (of: "low" | "mean" | "high", draws: "limit" | "foretold"): Line[] => {
    const grams = level(of);
    return grams === undefined ? [] : [{ name: words[of], points: [1, to].map((x) => ({ x, y: grams })), draws, look: 0 }];
  };
  return [
    {
      title: words.title,
      x: words.x,
      y: words.y,
      unit: "g",
      lines: [
        { name: words.readings, points, draws: "weighed", look: 0 },
        ...line("low", "foretold"),
        ...line("mean", "limit"),
        ...line("high", "foretold"),
      ],
    },
  ];
}
