import { cell } from "../runsheet/expressions/Expression";
import type { BalanceSheet } from "../runsheet/sheet/BalanceSheet";
import { CLOCK, LABEL } from "../runsheet/sheet/Columns";
import type { RunSheet } from "../runsheet/sheet/RunSheet";
import { checkWords } from "../runsheet/words/checkWords";
import { node, type Child, type Markup } from "./Markup";
import { paragraph, section } from "./page";
import type { ShownCells } from "./sheet/ShownCells";
import { reportWords } from "./words/reportWords";

const { verdicts, columns } = checkWords;

/** Failed checks line by line, those found wrong first; the others by name. */
export function checksSection({ rows }: RunSheet | BalanceSheet, shown: ShownCells): Child {
  const every = rows.checks.lines.map(({ row }) => ({
    name: shown.text(cell(row, LABEL)),
    verdict: shown.text(cell(row, CLOCK)),
    finding: shown.text(cell(row, CLOCK + 1)),
  }));
  const looked = every.filter(({ verdict }) => verdict !== "");
  const named = (verdict: string): string =>
    looked
      .filter((one) => one.verdict === verdict)
      .map(({ name }) => name.replace(/\s+/g, " "))
      .join("; ");
  const failed = looked
    .filter(({ verdict }) => verdict !== verdicts.inOrder && verdict !== verdicts.notYet)
    .sort((one, other) => Number(other.verdict === verdicts.contradiction) - Number(one.verdict === verdicts.contradiction));
  const words = reportWords;
  const listed = (label: string, names: string): readonly Markup[] =>
    names === "" ? [] : [node("p", { class: "note" }, node("b", {}, `${label}: `), names)];
  return section(
    words.checks,
    failed.length === 0 ? paragraph(words.allLooked) : paragraph(words.failed(failed.length, looked.length), "failed"),
    failed.length === 0 ? [] : table(failed),
    listed(words.inOrder, named(verdicts.inOrder)),
    listed(words.notYet, named(verdicts.notYet)),
  );
}

const table = (failed: readonly { readonly name: string; readonly verdict: string; readonly finding: string }[]): Markup =>
  node(
    "table",
    {},
    node("thead", {}, node("tr", {}, ...[checkWords.heading, columns.verdict, columns.finding].map((text) => node("th", { scope: "col" }, text)))),
    node(
      "tbody",
      {},
      failed.map(({ name, verdict, finding }) =>
        node("tr", {}, node("th", { scope: "row" }, name), node("td", { class: "failed verdict" }, verdict), node("td", {}, finding)),
      ),
    ),
  );
