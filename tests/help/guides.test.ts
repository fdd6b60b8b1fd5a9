import { everyGuide } from "../../src/help/guides/everyGuide";
import { guidePage } from "../../src/help/guides/guidePage";
import { callLiteral, inTable, tableIn } from "../functions/call";

const steps = everyGuide.flatMap(({ title, steps: ofGuide }) =>
  ofGuide.filter(({ cell }) => cell !== undefined).map((step) => [title, step.cell ?? "", step] as const),
);

test.each(steps)("%s: %s gives what was worked by hand", (_title, cell, { row, gives }) => {
  const answer = row === undefined ? callLiteral(cell) : inTable(tableIn(cell), [row, 1]);
  const decimals = String(gives).split(".")[1]?.length ?? 0;
  expect(Number(answer).toFixed(decimals)).toBe(Number(gives).toFixed(decimals));
});

test.each(everyGuide.map((guide) => [guide.title, guide] as const))(
  "%s says that its numbers are invented, warns, defers to local codes and names a sheet",
  (_title, guide) => {
    const page = guidePage(guide);
    expect(guide.scene).toContain("The numbers are invented");
    expect(guide.cautions.at(-1)).toMatch(/local .* codes .* licensed practice/);
    expect(page.indexOf("Caution.")).toBeLessThan(page.indexOf("Step by step"));
    expect(page).toContain(`choose the kind “${guide.sheet.label}”`);
    for (const typed of Object.values(guide.sheet.typed)) expect(page).toContain(` “${typed}”`);
    expect(page).toContain("press Insert its sheet beside this guide");
    expect(page).not.toContain("<script");
  },
);
