import { Command } from "commander";
import { reportHtml } from "../../report/reportHtml";
import { VERSION } from "../../sharing/record/calculationRecord";
import type { RangeReading } from "../../workbook/Workbook";
import type { Book, BookSheet } from "../book/Book";
import { openBook } from "../book/openBook";
import { isSame } from "../book/refuseDoubtful";
import { refuseUnfinished } from "../book/refuseUnfinished";
import { sheetsNeeded } from "../../explanation/saved/sheetsNeeded";
import { checkTarget, writeWhole } from "../files/writeWhole";
import { WrongUsage } from "../Refusal";
import { refuseUnknownSheets, sharedSheets } from "../share/sharedSheets";
import type { Terminal } from "../Terminal";
import { BOOK, exampleLines, JSON_ANSWER, KEEP_ERRORS, OUTPUT, OVERWRITE, reportHelp } from "../words/helpWords";
import { wantsEnding, written } from "../words/refusals";

interface ReportOptions {
  readonly output: string;
  readonly sheet?: string;
  readonly overwrite: boolean;
  readonly recalculate: boolean;
  readonly keepErrors: boolean;
  readonly json: boolean;
}

export const reportCommand = (terminal: Terminal): Command =>
  new Command("report")
    .description(reportHelp.about)
    .argument("<book>", BOOK)
    .requiredOption("-o, --output <file>", `${OUTPUT}, .html`)
    .option("--sheet <name>", reportHelp.sheet)
    .option("--recalculate", reportHelp.recalculate, true)
    .option("--no-recalculate", reportHelp.asSaved)
    .option("--keep-errors", KEEP_ERRORS, false)
    .option("--overwrite", OVERWRITE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(reportHelp.examples))
    .action(async (path: string, { output, sheet, overwrite, recalculate, keepErrors, json }: ReportOptions) => {
      if (!/\.html?$/i.test(output)) throw new WrongUsage(wantsEnding(output, ".html"));
      const target = { file: output, inputs: [path], overwrite };
      await refuseUnknownSheets(path, sheet === undefined ? [] : [sheet]);
      await checkTarget(target);
      const wanted = (of: Pick<Book, "sheets">): readonly BookSheet[] => sharedSheets(of, sheet === undefined ? [] : [sheet], "report").slice(0, 1);
      const book = await openBook(terminal, path, { recalculate, wanted, asSaved: "give --no-recalculate" });
      const shared = wanted(book);
      // Without being told so a report is calculated here.
      await refuseUnfinished(book, shared, { keepErrors, keepUnchecked: keepErrors || !recalculate });
      // Numbers are printed as the sheet shows them, and formats are known to the grid alone.
      const { calculatedSheets } = await import("../book/recalculate");
      const here = (await calculatedSheets(book.content, sheetsNeeded(book, shared))).find((one) => one.sheet === shared[0]?.name);
      if (here === undefined) return;
      const reading = recalculate ? here : asSaved(here, shared[0]?.reading.rows ?? []);
      await writeWhole(target, reportHtml(reading, { date: terminal.today(), version: VERSION }));
      terminal.note(written(output));
      if (json) terminal.answer(`${JSON.stringify({ file: output, sheet: reading.sheet, date: terminal.today() }, undefined, 2)}\n`);
    });

/** What the file holds, shown as the grid shows it where both hold the same. */
function asSaved(here: RangeReading, saved: RangeReading["rows"]): RangeReading {
  const held = new Map(saved.flat().map((one) => [one.cell, one]));
  const rows = here.rows.map((row) =>
    row.map((now) => {
      const was = held.get(now.cell);
      // What cannot be calculated here stands in the grid as a value.
      if (was === undefined || isSame(was, now)) return { ...now, formula: was?.formula ?? now.formula };
      return { ...now, formula: was.formula, value: was.value, error: was.error, shown: was.shown };
    }),
  );
  return { ...here, rows };
}
