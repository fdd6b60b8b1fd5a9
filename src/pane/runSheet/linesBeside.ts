import type uPlot from "uplot";
import type { SeriesPoint, WeighingSeries } from "../../runsheet/reading/readWeighings";
import { sheetWords } from "../../runsheet/words/sheetWords";
import { element } from "../element";

/** A line of the drying chart that nobody weighed: an edge of the band, or the way to the end foretold. */
export interface LineBeside {
  /** The place of the sample it belongs to, from 0. */
  readonly sample: number;
  readonly kind: "band" | "foretold";
  readonly points: readonly SeriesPoint[];
}

const WIDTH = 1;
const DASHES: Readonly<Record<LineBeside["kind"], readonly number[]>> = { band: [4, 2], foretold: [1, 3] };
const WORDS: Readonly<Record<LineBeside["kind"], string>> = { band: sheetWords.bandSeries(1), foretold: sheetWords.foretoldSeries(1) };

export const linesBeside = (series: readonly WeighingSeries[]): LineBeside[] =>
  series.flatMap(({ band = [], foretold }, sample): LineBeside[] => [
    ...band.map((points): LineBeside => ({ sample, kind: "band", points })),
    ...(foretold === undefined ? [] : [{ sample, kind: "foretold", points: foretold } as const]),
  ]);

/** Drawn in the colour of its sample, thinner and without marks: nothing was weighed there. */
export const besideLine = ({ kind }: LineBeside, stroke: string): uPlot.Series => ({
  label: WORDS[kind],
  stroke,
  width: WIDTH,
  dash: [...DASHES[kind]],
  spanGaps: true,
  points: { show: false },
});

/** What the lines are, once for all samples. */
export const besideKey = (lines: readonly LineBeside[]): HTMLElement[] =>
  (["band", "foretold"] as const)
    .filter((kind) => lines.some((line) => line.kind === kind))
    .map((kind) => element("li", { class: `beside-${kind}` }, element("span", { class: "swatch", "aria-hidden": "true" }), WORDS[kind]));
