import { CommandFolder, ran } from "../../command/inFolder";
import { oddCases } from "./oddCases";
import { fileOf } from "./shared";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

/** What only a defect would say. */
const DEFECT = /internal error|defect|TypeError|RangeError|undefined|\[object|\n\s+at /;

const looked = oddCases.filter(({ name }) => !/unpacks/.test(name));

test.each(looked.map((one) => [one.name, one] as const))("retort explain answers or refuses in words: %s", async (_, one) => {
  const book = files.put("in.xlsx", fileOf(one));
  for (const cell of ["D1", "A1"]) {
    const { code, answer, notes } = await ran("explain", book, cell);
    expect([0, 1]).toContain(code);
    expect(code === 0 ? answer : notes).not.toBe("");
    expect(`${answer}\n${notes}`).not.toMatch(DEFECT);
  }
});

// A report calculates the whole book, which takes its time, so every sixth is looked at.
test.each(looked.filter((_, place) => place % 6 === 0).map((one) => [one.name, one] as const))(
  "retort report answers or refuses in words: %s",
  async (_, one) => {
    const { code, answer, notes } = await ran("report", files.put("in.xlsx", fileOf(one)), "-o", files.at("out.html"));
    expect([0, 1]).toContain(code);
    expect(`${answer}\n${notes}`).not.toMatch(DEFECT);
  },
);
