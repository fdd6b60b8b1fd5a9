import { Command } from "commander";
import { reportHtml } from "../../report/reportHtml";
import { VERSION } from "../../sharing/record/calculationRecord";
import type { Book, BookSheet } from "../book/Book";
import { openBook } from "../book/openBook";
import { refuseUnfinished } from "../book/refuseUnfinished";
import { sheetsNeeded } from "../book/sheetsNeeded";
import { checkTarget, writeWhole } from "../files/writeWhole";
import { WrongUsage } from "../Refusal";
import { sharedSheets } from "../share/sharedSheets";
import type { Terminal } from "../Terminal";
import { BOOK, exampleLines, JSON_ANSWER, KEEP_ERRORS, OUTPUT, OVERWRITE, reportHelp } from "../words/helpWords";
import { wantsEnding, written } from "../words/refusals";

interface ReportOptions {
  readonly output: string;
  readonly sheet?: string;
  readonly overwrite: boolean;
  readonly keepErrors: boolean;
  readonly json: boolean;
}

export const reportCommand = (terminal: Terminal): Command =>
  new Command("report")
    .description(reportHelp.about)
    .argument("<book>", BOOK)
    .requiredOption("-o, --output <file>", `${OUTPUT}, .html`)
    .option("--sheet <name>", reportHelp.sheet)
    .option("--keep-errors", KEEP_ERRORS, false)
    .option("--overwrite", OVERWRITE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(reportHelp.examples))
    .action(async (path: string, { output, sheet, overwrite, keepErrors, json }: ReportOptions) => {
      if (!/\.html?$/i.test(output)) throw new WrongUsage(wantsEnding(output, ".html"));
      const target = { file: output, inputs: [path], overwrite };
      await checkTarget(target);
      const wanted = (of: Pick<Book, "sheets">): readonly BookSheet[] => sharedSheets(of, sheet === undefined ? [] : [sheet]).slice(0, 1);
      const book = await openBook(terminal, path, { recalculate: true, wanted });
      const shared = wanted(book);
      refuseUnfinished(book, shared, { keepErrors });
      // Numbers are printed as the sheet shows them, and formats are known to the grid alone.
      const { calculatedSheets } = await import("../book/recalculate");
      const reading = (await calculatedSheets(book.content, sheetsNeeded(book, shared))).find((one) => one.sheet === shared[0]?.name);
      if (reading === undefined) return;
      await writeWhole(target, reportHtml(reading, { date: terminal.today(), version: VERSION }));
      terminal.note(written(output));
      if (json) terminal.answer(`${JSON.stringify({ file: output, sheet: reading.sheet, date: terminal.today() }, undefined, 2)}\n`);
    });
