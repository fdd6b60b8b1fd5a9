import { olderSheets } from "../../../src/runsheet/words/olderSheets";
import { sheetWords } from "../../../src/runsheet/words/sheetWords";
import type { WrittenCell } from "../../explanation/SheetInMemory";

// As sheets of version 0.2 have it, which the pane goes on reading.
const { number, sample } = olderSheets;
const { elapsed } = sheetWords;
const MINUTES = [0, 30, 60, 90, 120, 150];
const TINS = { "Tin A, hazel shells": [12.4, 11.31, 10.72, 10.51, 10.46, 10.46], "Tin B, prunings": [11.9, 10.02, 9.11, 8.83, 8.78, 8.77] };

/** An invented run of an invented community orchard: cells of a drying table for two tins, a few calls, a few mistakes. */
export const inventedRun = (): Record<string, Record<string, WrittenCell>> => ({
  "Kiln 3": {
    A1: "Empty tin (g)", B1: 25.02, A2: "Before (g)", B2: 35.18, A3: "After (g)", B3: 28.11,
    A5: "Tin", B5: "before", C5: "after",
    B6: 35.1, C6: 28.3, D6: { formula: "=RETORT.VOLATILEFRACTION(25,B6:B8,C6:C8)", value: (35.1 - 28.3) / 10.1, shown: "0.673", spill: "D6:D8" },
    B7: 36.4, C7: 29.0, D7: { value: 7.4 / 11.4, shown: "0.649" },
    B8: 35.9, C8: 36.2, D8: { error: "#VALUE!" },
    B12: { formula: "=RETORT.VOLATILEFRACTION(B1,B2,B3)", value: (35.18 - 28.11) / (35.18 - 25.02), shown: "0.696" },
    B13: { formula: "=RETORT.VOLATILEFRACTION(B1,B3,B2)", error: "#VALUE!" },
    B14: { formula: '=IF(COUNT(B1:B4)<4,"",RETORT.MOISTURE.WET(B1,B2,B4))', value: "" },
    B15: { formula: "=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2; 9.194}, 0.01, \"absolute\")", value: "Weighing", spill: "B15:F18" },
    B22: { formula: "=RETORT.MOLARMASS(\"CaCO3\")", error: "#NAME?" },
    B24: { formula: "=RETORT.CONSTANTWEIGHT({10; \"spilt\"; 9.19})", error: "#VALUE!" },
    B20: { formula: "=SUM(B1:B3)", value: 88.31 },
  },
  "Drying 3": dryingTables(),
}); // prettier-ignore

function dryingTables(): Record<string, WrittenCell> {
  const tables = Object.entries(TINS).flatMap(([name, grams], table) => {
    const top = 1 + table * 12;
    const head = [[`A${top}`, name], [`A${top + 2}`, number], [`B${top + 2}`, elapsed], [`C${top + 2}`, sample]]; // prettier-ignore
    const rows = grams.flatMap((mass, index) => {
      const row = top + 3 + index;
      return [[`A${row}`, index + 1], [`B${row}`, MINUTES[index]], [`C${row}`, mass]]; // prettier-ignore
    });
    return [...head, ...rows];
  });
  return Object.fromEntries(tables);
}
