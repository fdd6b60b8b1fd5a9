import { growRunSheet } from "../../../src/runsheet/growing/growRunSheet";
import { hasUseFor, GROWTHS, isAtLimit, withOneMore, type Growth } from "../../../src/runsheet/growing/growths";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import type { CheckedOptions, RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { isBox } from "../../../src/runsheet/growing/SheetNow";
import { layout } from "../../../src/runsheet/sheet/layout";
import { typedCells } from "../../../src/workbook/holdsTheSame";
import { cellAfter } from "../../../src/workbook/SheetGrowth";
import { rowsPutIn } from "../../../src/runsheet/growing/rowsPutIn";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { gridSheetState } from "./gridSheetState";

jest.setTimeout(120_000);

/** Repeatable numbers from 0 to below 1: a linear congruential generator (Park and Miller 1988, a = 16807, m = 2^31 - 1). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
}

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

const base: RunSheetOptions = { kind: "drying", weighIns: 3, intervalMinutes: 20, readability: 0.01, vessel: "tin", replicates: 1 };

/** What a person typed, under the cell: some of the boxes, numbers and words. */
function someBoxes(options: CheckedOptions, random: () => number): Map<string, number | string> {
  const boxes = buildRunSheet(options).cells.filter((one) => isBox(one) && one.content === undefined && one.style === "runBox");
  return new Map(boxes.filter(() => random() < 0.7).map(({ cell }, index) => [cell, random() < 0.1 ? "tared" : 20 + index / 100]));
}

const starts: readonly [string, RunSheetOptions][] = [
  ["drying, two samples with temperatures", { ...base, replicates: 2, temperatures: true }],
  ["charring, one sample", { ...base, kind: "charring" }],
  ["ashing, two samples with pan zeros", { ...base, kind: "ashing", replicates: 2, panZeros: true, charFirings: 2, ashFirings: 1 }],
  ["liquids caught, two samples", { ...base, kind: "liquids", replicates: 2, charFirings: 2 }],
  ["staged heating, two samples with pan zeros", { ...base, kind: "staged", replicates: 2, panZeros: true, stages: 3 }],
  ["balance check", { ...base, kind: "balance" }],
];

test.each(starts)(
  "%s: grown in a random order it is the sheet inserted large and filled alike, and every typed value stands",
  async (title, start) => {
    const random = numbersFrom(title.length + 7);
    const options = checkOptions(start);
    const name = await open.workbook.addSheet(buildRunSheet(options));
    const cautionsAfter = layout(options).order[layout(options).order.indexOf("cautions") - 1];
    let now: CheckedOptions = { ...options, ...(cautionsAfter && { cautionsAfter }) };
    let typed = someBoxes(now, random);
    const last = layout(now).last;
    typed
      .set("B3000", "far below")
      .set(`C${last + 2}`, "below")
      .set("Z14", "beside")
      .set("Z16", 7);
    typed.delete("B3000");
    for (const [cell, content] of typed) await open.type(name, cell, content);
    await open.settled();
    for (let turn = 0; turn < 3; turn++) {
      const able = GROWTHS.filter(
        (growth) => hasUseFor(now, growth) && !isAtLimit(now, growth) && !(growth === "replicates" && now.replicates === 3),
      );
      const growth = able[Math.floor(random() * able.length)] as Growth;
      const to = withOneMore(now, growth);
      const steps = rowsPutIn(layout(now), layout(to));
      expect(await growRunSheet(open.workbook, name, growth)).toMatch(/^Added: .*Everything typed stands\.$/);
      typed = new Map([...typed].map(([cell, content]) => [cellAfter(cell, steps), content]));
      now = to;
    }
    const held = typedCells(await open.workbook.readUsed(name));
    for (const [cell, content] of typed) expect([cell, held.get(cell)]).toEqual([cell, content]);
    const large = await open.workbook.addSheet(buildRunSheet(now));
    for (const [cell, content] of typed) await open.type(large, cell, content);
    await open.settled();
    const [grown, inserted] = [gridSheetState(open.engine, name), gridSheetState(open.engine, large)];
    expect(Object.keys(grown.cells).length).toBeGreaterThan(start.kind === "balance" ? 150 : 300);
    expect(grown.custom).toEqual(inserted.custom);
    expect(grown.heights).toEqual(inserted.heights);
    expect(grown.rules).toEqual(inserted.rules);
    expect(grown.cells).toEqual(inserted.cells);
    expect(grown.freeze).toEqual(inserted.freeze);
  },
);
