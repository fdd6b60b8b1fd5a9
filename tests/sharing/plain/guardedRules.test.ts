import { guardedRules } from "../../../src/sharing/plain/guardedRules";
import { plainSheets } from "../../../src/sharing/plain/plainSheets";
import type { PlainRule } from "../../../src/sharing/plain/plainRules";
import type { RuleReading } from "../../../src/sharing/plain/reading/RuleReading";
import type { CellReading } from "../../../src/workbook/Workbook";

const reading = (cell: string, about: Partial<CellReading>): CellReading => ({
  ...{ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" },
  ...about,
});

// J1 has no plain form, K2 is calculated from it, L1 is not.
const rows = [
  [reading("A1", { value: 28 }), reading("A2", { value: 31 })],
  [
    reading("J1", { formula: "=INDEX(RETORT.COMPARE.GROUPS(A1:A2,A1:A2),2,3)", value: 28 }),
    reading("K2", { formula: "=J1*2", value: 56 }),
    reading("L1", { formula: "=A1*2", value: 56 }),
  ],
];
const names = [
  { name: "yield", formula: "=Tray!$J$1" },
  { name: "mass", formula: "=Tray!$A$1" },
];
const guarded = guardedRules(plainSheets({ sheets: [{ sheet: "Tray", range: "", rows }], names }, { date: "2027-01-15" }), names, ["Tray"]);

const rule = (formulas: readonly string[], about: Partial<RuleReading> = {}): RuleReading => ({
  ...{ kind: "colouring", sheet: "Tray", areas: ["G2"], formulas, says: "holds" },
  ...about,
});
const nowOf = (one: PlainRule | undefined): unknown => (one === undefined ? undefined : "now" in one ? one.now : one.why);

test.each<[string, string]>([
  ["=$J$1>28", "=IF(MAX('Tray changes'!$J$1)=2,FALSE,$J$1>28)"],
  ["=K2>J1", "=IF(MAX('Tray changes'!K2,'Tray changes'!J1)=2,FALSE,K2>J1)"],
  ["=Tray!J$1>28", "=IF(MAX('Tray changes'!J$1)=2,FALSE,Tray!J$1>28)"],
  ["=COUNT(J:K)=2", "=IF(MAX('Tray changes'!J:K)=2,FALSE,COUNT(J:K)=2)"],
  ["=yield>28", "=IF(MAX('Tray changes'!$J$1)=2,FALSE,yield>28)"],
  ['=$J$1&"J1"="28J1"', `=IF(MAX('Tray changes'!$J$1)=2,FALSE,$J$1&"J1"="28J1")`],
])("a rule that %s holds for nothing once that cell says that it is fixed", (formula, now) => {
  expect(nowOf(guarded(rule([formula])))).toEqual([now]);
  expect(nowOf(guarded(rule([formula], { kind: "entry" })))).toEqual([now]);
});

test.each(["=$L$1>28", "=A1>28", "=mass>28", "=J2>28", '="J1"="28"'])("a rule that reads no such cell stays: %s", (formula) =>
  expect(guarded(rule([formula]))).toBeUndefined(),
);

test("a reference that moves with the cell is followed over all cells of the rule", () => {
  const moving = { areas: ["G1:G9", "H20:H30"] };
  expect(nowOf(guarded(rule(["=K1>28"], moving)))).toEqual(["=IF(MAX('Tray changes'!K1)=2,FALSE,K1>28)"]);
  expect(guarded(rule(["=K$1>28"], { areas: ["G1:G9"] }))).toBeUndefined();
  expect(guarded(rule(["=$K3>28"], { areas: ["G1:G9"] }))).toBeUndefined();
  expect(nowOf(guarded(rule(["=$K3>28"], { areas: ["G3:G9", "G2"] })))).toEqual(["=IF(MAX('Tray changes'!$K3)=2,FALSE,$K3>28)"]);
});

test("what a cell is compared with is nothing then, for the cell itself too", () => {
  const compared = { says: "compared" } as const;
  expect(nowOf(guarded(rule(["=28", "=30"], { ...compared, areas: ["J1:J9"] })))).toEqual([
    "=IF(MAX('Tray changes'!J1)=2,NA(),28)",
    "=IF(MAX('Tray changes'!J1)=2,NA(),30)",
  ]);
  expect(nowOf(guarded(rule(["=$J$1"], compared)))).toEqual(["=IF(MAX('Tray changes'!$J$1)=2,NA(),$J$1)"]);
  expect(guarded(rule(["=28"], compared))).toBeUndefined();
});

test("an entry compared with such a cell could be anything, so that the rule goes; a list shows what stands in its cells", () => {
  expect(nowOf(guarded(rule(["=0", "=$J$1"], { kind: "entry", says: "compared" })))).toBe("ruleStale");
  const { says, ...list } = rule(["=$J$1:$J$9"], { kind: "entry", isList: true });
  expect([says, guarded(list)]).toEqual(["holds", undefined]);
});
