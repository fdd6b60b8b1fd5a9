import { verdictOf } from "../checks/Check";
import { CHECKS } from "../checks/everyCheck";
import { NOTHING, when } from "../expressions/choices";
import { cell, fn, is, joined, reckon, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { CheckName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { VALUE } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import { band, label, ofCells, type Block, type BlockCell } from "./Block";

/** What the sheet can tell about the run itself, a line each: empty until it can be judged, then "in order" or what to look at. */
export function checksBlock(sheet: RunSheet): Block {
  const { checks } = sheet.rows;
  return ofCells(
    ...band(sheet, checks.heading, checkWords.heading, "heading"),
    ...checks.lines.flatMap(({ check, row }) => checkLine(sheet, check, row)),
  );
}

function checkLine(sheet: RunSheet, check: CheckName, row: number): BlockCell[] {
  const findings = sheet.samples.flatMap((sample): (BlockCell & { readonly formula: Expression })[] => {
    const found = CHECKS[check](sheet, sample);
    return found === undefined ? [] : [{ at: sample.working(row), formula: verdictOf(found), style: "note" }];
  });
  const at = cell(row, VALUE);
  const told = overall(
    findings.map((finding) => finding.at),
    check === "range" ? upToSource : (finding) => finding,
  );
  return [label(at, checkWords.names[check]), { at, formula: told, style: "computed" }, ...findings];
}

/** What is wrong with the first sample that is not in order, and which others are not. */
function overall(findings: readonly Cell[], shown: (finding: Cell) => Expression): Expression {
  const [only] = findings;
  if (only !== undefined && findings.length === 1) return shown(only);
  const others = (after: number): Expression[] =>
    findings.slice(after + 1).map((finding, index) => when(isFine(finding), NOTHING, checkWords.alsoSample(after + index + 2)));
  const said = findings.reduceRight<Expression>(
    (next, finding, index) => when(isFine(finding), next, checkWords.ofSample(index + 1, shown(finding), others(index))),
    checkWords.inOrder,
  );
  return when(is(joined(...findings), "=", NOTHING), NOTHING, said);
}

const isFine = (finding: Cell): Call => fn("OR", is(finding, "=", NOTHING), is(finding, "=", checkWords.inOrder));

// Before the brackets that hold a source.
const SOURCE_FROM = " (";

/** A typical range stands in full, with its source, right of everything printed; the line itself ends before the brackets. */
const upToSource = (finding: Cell): Expression => fn("LEFT", finding, reckon(fn("FIND", SOURCE_FROM, joined(finding, SOURCE_FROM)), "-", 1));
