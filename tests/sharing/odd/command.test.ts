import { CommandFolder, ran } from "../../command/inFolder";
import { WorkbookPackage } from "../../../src/xlsx/package/WorkbookPackage";
import { oddCases } from "./oddCases";
import { fileOf, isRefused, promisedOf, SAYS } from "./shared";
import { wrongInPlain, wrongInValues } from "./wrongIn";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const named = oddCases.map((one) => [one.name, one] as const);

describe.each([
  ["values", "values"],
  ["plain", "plain-cells"],
] as const)("retort share --as %s", (kind, as) => {
  test.each(named)("%s", async (_, one) => {
    const content = fileOf(one);
    const words = ["share", files.put("in.xlsx", content), "--as", as, "-o", files.at("out.xlsx"), "--json"];
    const outcome = one[kind];
    let done = await ran(...words);
    if (isRefused(outcome)) {
      expect(done).toEqual({ code: 1, answer: "", notes: expect.stringMatching(outcome) as string });
      if (one.goOn === undefined) return;
      done = await ran(...words, ...one.goOn);
    }
    expect({ code: done.code, notes: done.code === 0 ? "" : done.notes }).toEqual({ code: 0, notes: "" });
    const { sheets } = JSON.parse(done.answer) as { readonly sheets?: readonly { readonly sheet: string; readonly copy: string }[] };
    const all = (await (await WorkbookPackage.of(content.slice())).sheets()).map(({ name }) => ({ sheet: name, copy: name }));
    const copies = new Map((sheets ?? all).map(({ sheet, copy }) => [sheet, copy]));
    const isCalculated = one.goOn?.includes("--recalculate") === true;
    const made = {
      before: content,
      after: files.read("out.xlsx"),
      copies,
      says: SAYS[kind],
      tolerance: isCalculated ? 1e-12 : 0,
      isCalculated,
      ...promisedOf(one, kind),
    };
    expect(await (kind === "values" ? wrongInValues : wrongInPlain)(made)).toEqual([]);
  });
});

test("retort record refuses what share refuses, and is made of everything else", async () => {
  const outcomes: string[] = [];
  // What is refused, and every fifth of the others: records of copies are made by the same piece.
  const looked = oddCases.filter(({ values }, place) => isRefused(values) || place % 5 === 0);
  for (const one of looked.filter(({ name }) => !/many sheets|unpacks|damaged part/.test(name))) {
    const book = files.put("in.xlsx", fileOf(one));
    const { code, notes } = await ran("record", book, "-o", files.at("record.xlsx"), "--overwrite");
    // Macros stand in the way of a copy and not of a record.
    const isOtherwise = isRefused(one.values) && !/macros/.test(one.values.source) ? code !== 1 || !one.values.test(notes) : code !== 0;
    if (isOtherwise) outcomes.push(`${one.name}: ${notes}`);
  }
  expect(outcomes).toEqual([]);
});

test("hidden sheets with calls are named where they are not shared", async () => {
  const one = oddCases.find(({ name }) => name.startsWith("a hidden sheet with calls"));
  const { notes } = await ran("share", files.put("in.xlsx", fileOf(one ?? (oddCases[0] as (typeof oddCases)[number]))), "--as", "values");
  expect(notes).toContain('Not shared, being hidden: "Held", "Deep". Name a sheet with --sheet to share it.');
});
