import { ABOVE_ZERO, type ChartSeries, type PlannedChart } from "../../workbook/SheetPlan";
import { isInKey, seriesLooks, type SeriesLook } from "../../workbook/seriesLooks";
import type { FileValue } from "../package/cells/CellChange";
import { escapedText } from "../package/parts/markup";

const CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";

/** EMU: 12,700 a point (ECMA-376 Part 1, 20.1.10.16). */
const PER_POINT = 12_700;
/** Hundredths of a point. */
const TITLE_SIZE = 1200;
const TEXT_SIZE = 1000;
const MARKER_SIZE = 7;
const INK = "1F2328";
const GRID = "C9CFC8";

/** What the cells of a range hold, from the first on, each column after the other. */
export type ValuesIn = (range: string) => readonly FileValue[];

/**
 * A scatter chart with lines as a part of a file (ECMA-376 Part 1, 21.2), with the points its cells hold, so that a program that calculates
 * nothing draws it too. Blank cells make a gap; cells in columns that are not shown count.
 * @param reference a range of the chart as a formula names it: "'Orchard kiln'!$B$3:$B$9"
 */
export function chartMarkup(chart: PlannedChart, reference: (range: string) => string, valuesIn: ValuesIn): string {
  const looks = seriesLooks(chart.series);
  const series = chart.series.map((one, index) => seriesMarkup(one, index, { look: looks[index], reference, valuesIn })).join(""); // prettier-ignore
  const formatOf = (axis: "x" | "y"): string => (chart.unforetold?.includes(axis) ? ABOVE_ZERO : "General");
  const legend = chart.series.length > 1 ? legendMarkup(chart.series) : "";
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<c:chartSpace xmlns:c="${CHART}" xmlns:a="${DRAWING}"><c:roundedCorners val="0"/><c:chart>` +
    `${titleMarkup(chart.title, TITLE_SIZE)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>` +
    `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series}<c:axId val="1"/><c:axId val="2"/></c:scatterChart>` +
    `${axisMarkup("b", chart.xTitle, formatOf("x"))}${axisMarkup("l", chart.yTitle, formatOf("y"))}</c:plotArea>${legend}<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>` +
    `<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr>` +
    `<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${TEXT_SIZE}"><a:solidFill><a:srgbClr val="${INK}"/></a:solidFill></a:defRPr></a:pPr><a:endParaRPr lang="en-GB"/></a:p></c:txPr></c:chartSpace>`
  );
}

interface ForSeries {
  readonly look: SeriesLook | undefined;
  readonly reference: (range: string) => string;
  readonly valuesIn: ValuesIn;
}

function seriesMarkup({ name, x, y }: ChartSeries, index: number, { look, reference, valuesIn }: ForSeries): string {
  const { dash = "solid", marker = "circle", width = 1, colour = `#${INK}`, open } = look ?? {};
  const solid = (hex: string): string => `<a:solidFill><a:srgbClr val="${hex}"/></a:solidFill>`;
  const fill = solid(colour.slice(1));
  const drawn = `<a:ln w="${width * PER_POINT}" cap="rnd">${fill}<a:prstDash val="${dash}"/><a:round/></a:ln>`;
  const line = dash === "none" ? "<a:ln><a:noFill/></a:ln>" : drawn;
  // Those made of strokes have no inside to fill.
  const inside = marker === "x" || marker === "plus" ? "<a:noFill/>" : open ? solid("FFFFFF") : fill;
  const mark = `<c:spPr>${inside}<a:ln w="${PER_POINT}">${fill}</a:ln></c:spPr>`;
  const symbol = marker === "none" ? '<c:symbol val="none"/>' : `<c:symbol val="${marker}"/><c:size val="${MARKER_SIZE}"/>${mark}`;
  const values = (range: string): string => `<c:numRef><c:f>${escapedText(reference(range))}</c:f>${cacheMarkup(valuesIn(range))}</c:numRef>`;
  return (
    `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${escapedText(name)}</c:v></c:tx><c:spPr>${line}</c:spPr><c:marker>${symbol}</c:marker>` +
    `<c:xVal>${values(x)}</c:xVal><c:yVal>${values(y)}</c:yVal><c:smooth val="0"/></c:ser>`
  );
}

function cacheMarkup(values: readonly FileValue[]): string {
  const points = values.flatMap((value, index) => (typeof value === "number" ? [`<c:pt idx="${index}"><c:v>${value}</c:v></c:pt>`] : []));
  return `<c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${values.length}"/>${points.join("")}</c:numCache>`;
}

function titleMarkup(text: string, size: number): string {
  const isBold = size === TITLE_SIZE ? 1 : 0;
  return (
    `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="${isBold}"/></a:pPr>` +
    `<a:r><a:rPr lang="en-GB" sz="${size}" b="${isBold}"/><a:t>${escapedText(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`
  );
}

/** Axes cross at their least values, wherever 0 lies. */
function axisMarkup(side: "b" | "l", title: string, format: string): string {
  const [own, other] = side === "b" ? [1, 2] : [2, 1];
  const line = (colour: string): string => `<c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="${colour}"/></a:solidFill></a:ln></c:spPr>`;
  return (
    `<c:valAx><c:axId val="${own}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="${side}"/>` +
    `<c:majorGridlines>${line(GRID)}</c:majorGridlines>${titleMarkup(title, TEXT_SIZE)}<c:numFmt formatCode="${format}" sourceLinked="0"/>` +
    `<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>${line(INK)}<c:crossAx val="${other}"/><c:crosses val="min"/><c:crossBetween val="midCat"/></c:valAx>`
  );
}

/**
 * The key names what was weighed for each sample, and a limit and a forecast once for all of them. It stands beside the curves: below them it
 * takes half of a low chart on paper.
 */
function legendMarkup(series: readonly ChartSeries[]): string {
  const hidden = series.map((one, index) => (isInKey(one) ? "" : `<c:legendEntry><c:idx val="${index}"/><c:delete val="1"/></c:legendEntry>`)).join(""); // prettier-ignore
  return `<c:legend><c:legendPos val="r"/>${hidden}<c:overlay val="0"/></c:legend>`;
}
