import { drawnLines } from "../../src/workbook/drawnLines";

describe("drawnLines(text, width)", () => {
  it.each<[string, string, number, number]>([
    ["nothing takes a line", "", 10, 1],
    ["as many digits as the column is wide, less a margin", "1234567890 ".repeat(4).trim(), 24, 2],
    ["capitals take more room than digits", "W".repeat(20), 20, 2],
    ["and small narrow letters less", "illi lili ".repeat(4).trim(), 22, 1],
    ["ends of lines count", "a\nb\nc", 40, 3],
    ["a formula full of cells and signs", "=IF(COUNT($D$12:$D$19)>0,INDEX($D$12:$D$19,MAX($C$12:$E$19)),MAX($C$12:$E$19))", 60, 2],
  ])("%s", (_, text, width, lines) => {
    expect(drawnLines(text, width)).toBe(lines);
  });
});
