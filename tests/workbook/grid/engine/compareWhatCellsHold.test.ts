import { openRunSheet } from "../../../runsheet/openRunSheet";
import { clock } from "../../../runsheet/plainRun";

jest.setTimeout(60_000);

// The sheet watches its own formulas by 1 - ISFORMULA of whole blocks, in one calculation with the answer, as when a file is opened.
test.each([2, 3, 6])("the answer of %i samples names what is heated, whatever was found of the cells around it", async (replicates) => {
  const open = await openRunSheet({
    ...({ kind: "charring", weighIns: 8, intervalMinutes: 20, vessel: "lidded tin", readability: 0.01 } as const),
    replicates,
  });
  const { sheet, vessel, round, fire, type } = open;
  await type(sheet.setup.material, "oak");
  for (const sample of sheet.samples) {
    const [tin, off] = [25 + sample / 10, sample / 100];
    await vessel(tin, sample);
    for (const [index, grams] of [40.2, 26.22, 26.21].entries())
      await round(index + 1, sample === 1 ? clock(9, 20 * index) : null, tin + grams + off, sample);
    for (const [index, grams] of [7.9, 7.53, 7.52].entries()) await fire("charring", index + 1, tin + grams, {}, sample);
    if (sheet.end !== undefined) await type(sheet.end.vessel(sample), tin);
  }
  const [, answer] = await open.head();
  expect(answer).toContain("of the dry oak left as vapour");
  await type(sheet.setup.material, "");
  expect((await open.head())[1]).toContain("of the dry sample left as vapour");
  open.close();
});
