import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { plannedChart } from "../../../src/report/chart/plannedChart";
import { runCharts } from "../../../src/runsheet/blocks/curvesBlock";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { CORNERS, curveCells } from "../../../src/runsheet/formulas/curves/curves";
import { firingBandCells } from "../../../src/runsheet/formulas/curves/firingBand";
import { stripCell } from "../../../src/runsheet/formulas/strip";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { Fired } from "../../../src/runsheet/sheet/Weighed";
import { cellArea } from "../../../src/workbook/cellArea";
import { plainRun, USUAL, type PlainRun } from "../plainRun";

/** The corners of the band, minutes and grams, and the way to the end foretold. */
function pointsOf(run: PlainRun, sample = 1) {
  const cells = curveCells(run.sheet);
  return {
    band: CORNERS.map((corner) => [run.value(cells.bandAt(corner % 2)), run.value(cells.band(corner, sample))]),
    foretold: [
      [run.value(cells.latestAt(sample)), run.value(cells.latest(sample))],
      [run.value(cells.foretoldAt(sample)), run.value(cells.foretold(sample))],
    ],
  };
}

const close = (...points: readonly (readonly [number, number])[]) => points.map(([minutes, grams]) => [minutes, expect.closeTo(grams, 9) as number]);

/** Every 30 minutes half of the water left: 10 g of sample of which 1.6 g is water at first. */
const HALVING = [35, 34.2, 33.8, 33.6, 33.5];

describe("the points of the drying chart that nobody weighs", () => {
  test("on a blank sheet span the axes without a line: 0 min and 0 g, and the last of 8 rounds every 30 min below 0", () => {
    const { band, foretold } = pointsOf(plainRun({ kind: "drying", weighIns: 8, intervalMinutes: 30 }));
    expect(band).toEqual([[210, -1], [210, -1], [210, -1], [210, -1]]); // prettier-ignore
    expect(foretold).toEqual([[0, 0], [0, 0]]); // prettier-ignore
  });

  test("are the band around the latest weighing by the limit in grams, until the next round is due", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    run.weigh(HALVING);
    run.type(run.sheet.settings.criterion, "of last");
    run.type(run.sheet.settings.limit, 0.002);
    // 0.002 of 33.5 - 25 = 8.5 g is 0.017 g; the fifth round was at 120 min and the next is due at 150.
    expect(pointsOf(run).band).toEqual(close([120, 33.483], [150, 33.483], [120, 33.517], [150, 33.517]));
  });

  test("follow the criterion: two display steps of 0.01 g", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel("tared");
    run.weigh([10, 9, 8.7]);
    run.type(run.sheet.settings.criterion, "readability");
    run.type(run.sheet.settings.limit, 2);
    expect(pointsOf(run).band).toEqual(close([60, 8.68], [90, 8.68], [60, 8.72], [90, 8.72]));
  });

  test("foretell the end by the falling-rate curve: half of the water left every round ends at 33.4 g", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    run.weigh(HALVING);
    run.type(run.sheet.settings.readability, 0.0001);
    run.type(run.sheet.settings.criterion, "of last");
    run.type(run.sheet.settings.limit, 0.001);
    // 33.5 less 0.05, 0.025, 0.0125, 0.00625: the fourth more weighing is the first within 0.001 of 8.4 g.
    expect(pointsOf(run).foretold).toEqual([
      [120, 33.5],
      [240, expect.closeTo(33.4, 3)],
    ]);
  });

  test("are one point on the curve while no limit is in force and nothing can be foretold", () => {
    const run = plainRun({ kind: "drying", replicates: 2 });
    run.vessel(25);
    run.vessel(26, 2);
    run.weigh([35]);
    const { band, foretold } = pointsOf(run);
    expect(band).toEqual(close([0, 35], [0, 35], [0, 35], [0, 35]));
    expect(foretold).toEqual([[0, 35], [0, 35]]); // prettier-ignore
    // The other sample is not weighed yet: its points lie on what is, so that no axis reaches down to 0 g.
    expect(pointsOf(run, 2).band).toEqual(close([0, 35], [0, 35], [0, 35], [0, 35]));
  });
});

/** The corners of a firing's band, minutes held and grams. */
function firingBandOf(run: PlainRun, sample = 1) {
  const cells = firingBandCells(run.sheet);
  return CORNERS.map((corner) => [run.value(cells.at(corner % 2)), run.value(cells.corner(corner, sample))]);
}

describe("the band of the firing chart", () => {
  const fired = (phases: readonly (readonly ["charring" | "ashing", readonly number[]])[], options: Partial<RunSheetOptions> = {}) => {
    const run = plainRun({ kind: "charring", ...options });
    run.vessel(25);
    run.weigh([65.2, 51.21, 51.21]);
    for (const [phase, grams] of phases) run.fire(phase, grams);
    return run;
  };

  test.each(["charring", "ashing", "salt"] as const)(
    "on a blank %s sheet is a point below 0 for each edge, so that an axis stands between",
    (kind) => {
      expect(firingBandOf(plainRun({ kind }))).toEqual([[-1, -1], [-1, -1], [-1, 0], [-1, 0]]); // prettier-ignore
    },
  );

  test("lies two display steps to either side of the latest char, for another firing as long as the last", () => {
    // Two firings of 60 min; a third of 60 min would end at 180.
    expect(firingBandOf(fired([["charring", [32.9, 32.54]]]))).toEqual(close([120, 32.52], [180, 32.52], [120, 32.56], [180, 32.56]));
  });

  test("follows the criterion without the vessel: 0.002 of 32.5 - 25 = 7.5 g is 0.015 g", () => {
    const run = fired([["charring", [32.5]]]);
    run.type(run.sheet.settings.criterion, "of last");
    run.type(run.sheet.settings.limit, 0.002);
    expect(firingBandOf(run)).toEqual(close([60, 32.485], [120, 32.485], [60, 32.515], [120, 32.515]));
  });

  test("is a point while no limit is set", () => {
    const run = fired([["charring", [32.54]]]);
    run.type(run.sheet.settings.limit, null);
    expect(firingBandOf(run)).toEqual(close([60, 32.54], [60, 32.54], [60, 32.54], [60, 32.54]));
  });

  test("is drawn of every chart of firings, a salt's heating too, and not of stages", () => {
    const salt = plainRun({ kind: "salt", readability: 0.001 });
    salt.vessel(20);
    salt.weigh([25]);
    salt.fire("heating", [23.2]);
    expect(firingBandOf(salt)).toEqual(close([60, 23.198], [120, 23.198], [60, 23.202], [120, 23.202]));
    const banded = (kind: RunSheetOptions["kind"]) => {
      const charts = runCharts(plainRun({ kind }).sheet).slice(1);
      return charts.map(({ series }) => series.filter(({ draws }) => draws === "limit").map(({ isUpper }) => isUpper ?? false));
    };
    for (const kind of ["charring", "ashing", "liquids", "salt"] as const) expect([kind, banded(kind)]).toEqual([kind, [[false, true]]]);
    expect((["staged", "drying"] as const).map(banded)).toEqual([[[]], []]);
  });

  test("of char and ash is that of the char, then from the first ashing on that of the ash, which comes after the char", () => {
    const run = fired([["charring", [32.9, 32.54]]], { kind: "ashing", replicates: 2 }); // prettier-ignore
    expect(firingBandOf(run)).toEqual(close([120, 32.52], [180, 32.52], [120, 32.56], [180, 32.56]));
    // A sample not fired yet has a point where something is.
    expect(firingBandOf(run, 2)).toEqual(close([120, 32.9], [180, 32.9], [120, 32.9], [180, 32.9]));
    run.fire("ashing", [25.61]);
    expect(firingBandOf(run)).toEqual(close([180, 25.59], [240, 25.59], [180, 25.63], [240, 25.63]));
    run.fire("ashing", [25.61, 25.6]);
    expect(firingBandOf(run)).toEqual(close([240, 25.58], [300, 25.58], [240, 25.62], [300, 25.62]));
    run.type(run.sheet.settings.limit, null);
    expect(firingBandOf(run)).toEqual(close([240, 25.6], [240, 25.6], [240, 25.6], [240, 25.6]));
  });

  test("a limit per hour judges the ash by its own minutes, though they count on from those of the char", () => {
    const run = fired([["charring", [32.9, 32.54]], ["ashing", [25.61, 25.6]]], { kind: "ashing" }); // prettier-ignore
    run.type(run.sheet.settings.criterion, "per hour");
    run.type(run.sheet.settings.limit, 0.02);
    // 0.02 an hour of 25.60 - 25 = 0.60 g, over the hour that the second ashing was held.
    const [[, lower], , [, upper]] = firingBandOf(run) as [[number, number], unknown, [number, number]];
    expect([lower, upper]).toEqual([expect.closeTo(25.588, 9), expect.closeTo(25.612, 9)]);
  });

  test("firings take no minutes while nothing was weighed, then one without its minutes counts 1, so that the next is later", () => {
    const run = plainRun({ kind: "ashing", charFirings: 3, ashFirings: 2 });
    const minutes = () => [...rowsOf(run.sheet.charring), ...rowsOf(run.sheet.ashing)].map((row) => run.value(cell(row, run.sheet.columns.elapsed)));
    expect(minutes()).toEqual([0, 0, 0, 0, 0]);
    run.vessel(25);
    run.weigh([65.2, 51.21, 51.21]);
    run.fire("charring", [32.9, 32.54]);
    expect(minutes()).toEqual([60, 120, 121, 120, 120]);
    const { charring } = run.sheet;
    if (charring === undefined) throw new Error("char");
    run.type(charring.fire(charring.rows.fire.first + 1).held, null);
    expect(minutes()).toEqual([60, 61, 62, 61, 61]);
  });

  test("is of what counts where the balance wandered: 0.03 g of zero come off", () => {
    const run = fired([["charring", [32.54]]], { panZeros: true });
    const strip = run.sheet.charring?.rows.strip?.first ?? 0;
    for (const column of ["before", "after"] as const) run.type(stripCell(strip, column), 0.03);
    expect(firingBandOf(run)).toEqual(close([60, 32.49], [120, 32.49], [60, 32.53], [120, 32.53]));
  });
});

test("the firing chart stands beside the drying chart, char and ash each under its name", () => {
  const charts = (kind: "drying" | "charring" | "ashing") => buildRunSheet({ ...USUAL, kind, replicates: 2 }).charts ?? [];
  expect(charts("drying").map(({ title }) => title)).toEqual(["Drying"]);
  const [, charring] = charts("charring");
  expect([charring?.title, charring?.xTitle, charring?.yTitle]).toEqual([
    "Firing",
    "minutes held so far; a firing without counts 1",
    "with the vessel, g",
  ]);
  const named = (kind: "charring" | "ashing"): (readonly [string, string | undefined])[] =>
    charts(kind)[1]?.series.map(({ name, draws }) => [name, draws] as const) ?? [];
  expect(named("charring")).toEqual([
    ["Sample 1", undefined],
    ["finished if the next falls in here", "limit"],
    ["finished if the next falls in here: upper edge", "limit"],
    ["Sample 2", undefined],
    ["finished, sample 2", "limit"],
    ["finished, sample 2: upper edge", "limit"],
  ]);
  expect(named("ashing").flatMap(([name, draws]) => (draws === undefined ? [name] : []))).toEqual([
    "Sample 1, char",
    "Sample 1, ash",
    "Sample 2, char",
    "Sample 2, ash",
  ]);
});

/** The numbers that a chart of the plan would draw. */
function drawnBy(run: PlainRun, title: string) {
  const planned = runCharts(run.sheet).find((chart) => chart.title === title);
  if (planned === undefined) throw new Error(title);
  const chart = plannedChart(planned, ({ row, column }) => {
    const value = run.value(cell(row, column));
    return typeof value === "number" ? value : undefined;
  }, ""); // prettier-ignore
  return { ...chart, weighed: chart.lines.filter(({ draws }) => draws === "weighed").map(({ name, points }) => [name, points.map(({ x, y }) => [x, y])]) }; // prettier-ignore
}

describe("What a chart draws", () => {
  const zeros = (run: PlainRun, row: number, grams: number): void => {
    for (const column of ["before", "after"] as const) run.type(stripCell(row, column), grams);
  };

  test("is what the sheet reasons with: weighings less the balance's zero, none where nothing was weighed", () => {
    const run = plainRun({ kind: "charring", panZeros: true, replicates: 2 });
    run.vessel(25);
    run.vessel(26, 2);
    run.weigh([35, 33, 32.5]);
    const strip = run.sheet.rows.drying.strip?.first ?? 0;
    for (const [index, grams] of [0, 0.1, 0.2].entries()) zeros(run, strip + index, grams);
    const { weighed } = drawnBy(run, "Drying");
    expect(weighed).toEqual([["Sample 1", close([0, 35], [30, 32.9], [60, 32.3])]]);
    run.fire("charring", [28.4, 28.2]);
    zeros(run, run.sheet.charring?.rows.strip?.first ?? 0, 0.3);
    expect(drawnBy(run, "Firing").weighed).toEqual([["Sample 1", close([60, 28.1], [120, 28.2])]]);
  });

  /** What its axes span, and along which of them no number is known. */
  const axesOf = (run: PlainRun, title: string) => {
    const { room } = drawnBy(run, title);
    const ends = (values: readonly number[]) => [Math.min(...values), Math.max(...values)];
    return [ends(room?.points.map(({ x }) => x) ?? []), ends(room?.points.map(({ y }) => y) ?? []), room?.unforetold];
  };

  test.each(["drying", "charring", "ashing", "liquids", "salt"] as const)(
    "of a blank %s sheet are axes: minutes to the last round as planned, no weights",
    (kind) => {
      const run = plainRun({ kind, weighIns: 8, intervalMinutes: 30 });
      expect(drawnBy(run, "Drying").weighed).toEqual([]);
      expect(axesOf(run, "Drying")).toEqual([[0, 210], [-1, 0], ["y"]]);
      if (kind !== "drying") expect(axesOf(run, "Firing")).toEqual([[-1, -1], [-1, 0], ["x", "y"]]); // prettier-ignore
    },
  );

  test("of a blank staged sheet are axes of all that can be left, up to the hottest of furnaces", () => {
    const axes = (degrees: "C" | "F") => axesOf(plainRun({ kind: "staged", degrees }), "Left against temperature").slice(0, 2);
    expect(axes("C")).toEqual([[20, 1000], [0, 1]]); // prettier-ignore
    expect(axes("F")).toEqual([[68, 1800], [0, 1]]); // prettier-ignore
  });

  test("has nothing below what was weighed and its band once something is, though a sample is not weighed yet", () => {
    const run = plainRun({ kind: "ashing", replicates: 2 });
    run.vessel(25);
    run.weigh([65.2, 51.21, 51.21]);
    run.fire("charring", [32.54, 32.54]);
    expect(axesOf(run, "Drying").slice(0, 2)).toEqual([[0, 90], [expect.closeTo(51.19, 9), 65.2]]); // prettier-ignore
    expect(axesOf(run, "Firing").slice(0, 2)).toEqual([[60, 180], [expect.closeTo(32.52, 9), expect.closeTo(32.56, 9)]]); // prettier-ignore
  });

  test("of stages has a frame that stretches no axis once something is weighed", () => {
    const run = plainRun({ kind: "staged" });
    run.vessel(25);
    run.weigh([65.2, 51.21, 51.21]);
    run.fire("stages", [32.54]);
    const frames = runCharts(run.sheet).map(({ series }) => series.filter(({ draws }) => draws === "frame").map(({ x, y }) => [x, y].map((at) => valueAt(run, at)))); // prettier-ignore
    expect(frames).toEqual([[], [[20, 1]]]);
  });
});

const rowsOf = (table: Fired | undefined): number[] =>
  table === undefined ? [] : Array.from({ length: table.rows.last - table.rows.first + 1 }, (_, index) => table.rows.first + index);

const valueAt = (run: PlainRun, place: string) => {
  const at = cellArea(place);
  return at && run.value(cell(at.row + 1, at.column));
};
