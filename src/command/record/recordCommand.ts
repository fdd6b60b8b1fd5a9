import { Command } from "commander";
import { calculationRecord } from "../../sharing/record/calculationRecord";
import { filledDownTogether } from "../../sharing/record/filledDown";
import { everyFormulaCell } from "../../sharing/formulaCells";
import { recordRows, type RecordRow } from "../../sharing/record/recordRows";
import { recordedRules, type RecordedRule } from "../../sharing/record/recordedRules";
import { putRules } from "../../xlsx/handedOn/putRules";
import { newFileOf } from "../../xlsx/planned/addPlanned";
import { openBook } from "../book/openBook";
import { refuseUnfinished } from "../book/refuseUnfinished";
import { checkTarget, writeWhole } from "../files/writeWhole";
import { Refusal, WrongUsage } from "../Refusal";
import { severalNames } from "../severalNames";
import { refuseUnknownSheets, sharedSheets } from "../share/sharedSheets";
import { printable, type Terminal } from "../Terminal";
import { BOOK, exampleLines, JSON_ANSWER, KEEP_ERRORS, OUTPUT, OVERWRITE, RECALCULATE, recordHelp } from "../words/helpWords";
import { recordLines } from "../words/recordWords";
import { noFormulas, OVERWRITE_WITH_OUTPUT, recording, wantsEnding, written } from "../words/refusals";
import { recordName } from "../../sharing/copyNames";

interface RecordAnswer {
  readonly sheet: string;
  readonly rows: readonly RecordRow[];
  readonly rules: readonly RecordedRule[];
}

interface RecordOptions {
  readonly output?: string;
  readonly sheet: readonly string[];
  readonly overwrite: boolean;
  readonly recalculate: boolean;
  readonly keepErrors: boolean;
  readonly json: boolean;
}

export const recordCommand = (terminal: Terminal): Command =>
  new Command("record")
    .description(recordHelp.about)
    .argument("<book>", BOOK)
    .option("-o, --output <file>", `${OUTPUT}, .xlsx`)
    .option("--sheet <name>", recordHelp.sheet, severalNames, [])
    .option("--recalculate", RECALCULATE, false)
    .option("--keep-errors", KEEP_ERRORS, false)
    .option("--overwrite", OVERWRITE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(recordHelp.examples))
    .action((book: string, options: RecordOptions) => record(terminal, book, options));

async function record(terminal: Terminal, path: string, { output, sheet, overwrite, recalculate, keepErrors, json }: RecordOptions): Promise<void> {
  if (output === undefined && overwrite) throw new WrongUsage(OVERWRITE_WITH_OUTPUT);
  const target = output === undefined ? undefined : { file: output, inputs: [path], overwrite };
  if (target !== undefined && !target.file.toLowerCase().endsWith(".xlsx")) throw new WrongUsage(wantsEnding(target.file, ".xlsx"));
  await refuseUnknownSheets(path, sheet);
  if (target !== undefined) await checkTarget(target);
  const book = await openBook(terminal, path, { recalculate, wanted: (of) => sharedSheets(of, sheet, "record") });
  const sheets = sharedSheets(book, sheet, "record");
  await refuseUnfinished(book, sheets, { keepErrors });
  // The file is not written, so that what its rules would become may be put in.
  const put = await putRules(book.file, sheets.map(({ name }) => name)); // prettier-ignore
  const found = sheets.map((one) => {
    const formulaCells = everyFormulaCell(one.reading);
    if (formulaCells.length === 0 && recordedRules(one.name, put).length === 0) throw new Refusal(noFormulas(one.name));
    book.progress(recording(formulaCells.length));
    return { sheet: one.name, formulaCells, rows: one.reading.rows };
  });
  if (target !== undefined) {
    const taken: string[] = [];
    const plans = found.map(({ sheet: name, ...calculated }) => {
      const wished = recordName(name, taken);
      taken.push(wished);
      return calculationRecord({ sheet: name, copy: name, date: terminal.today(), ...calculated, put }, wished);
    });
    await writeWhole(target, await newFileOf(plans));
    terminal.note(written(target.file));
    if (!json) return;
  }
  const rows = found.map(({ sheet: name, formulaCells, rows: held }): RecordAnswer => ({
    sheet: name,
    rows: recordRows(filledDownTogether(formulaCells), held),
    rules: recordedRules(name, put),
  }));
  terminal.answer(
    json
      ? `${JSON.stringify(rows, undefined, 2)}\n`
      : `${printable(rows.flatMap((one) => recordLines(one.sheet, one.rows, one.rules)).join("\n"))}\n`,
  );
}
