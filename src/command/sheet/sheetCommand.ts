import { Command } from "commander";
import { ArgumentProblem } from "../../problems/ArgumentProblem";
import { buildRunSheet } from "../../runsheet/buildRunSheet";
import { checkOptions } from "../../runsheet/options/checkOptions";
import { heldToChemistry } from "../../runsheet/options/heldToChemistry";
import type { SheetPlan } from "../../workbook/SheetPlan";
import { newFileOf } from "../../xlsx/planned/addPlanned";
import { checkTarget, writeWhole } from "../files/writeWhole";
import { WrongUsage } from "../Refusal";
import type { Terminal } from "../Terminal";
import { exampleLines, JSON_ANSWER, OUTPUT, OVERWRITE } from "../words/helpWords";
import { wantsEnding, written } from "../words/refusals";
import { onlyWithAddIn, sheetHelp } from "../words/sheetCommandWords";
import { refuseUnused } from "./refuseUnused";
import { plainRunSheet } from "./plainRunSheet";
import { runSheetOptions, withSheetOptions, type TypedOptions } from "./sheetOptions";

interface SheetOptions extends TypedOptions {
  readonly output: string;
  readonly plainCells: boolean;
  readonly overwrite: boolean;
  readonly json: boolean;
}

export const sheetCommand = (terminal: Terminal): Command =>
  withSheetOptions(new Command("sheet"))
    .description(sheetHelp.about)
    .requiredOption("-o, --output <file>", `${OUTPUT}, .xlsx`)
    .option("--plain-cells", sheetHelp.plainCells, false)
    .option("--overwrite", OVERWRITE, false)
    .option("--json", JSON_ANSWER, false)
    .addHelpText("after", exampleLines(sheetHelp.examples))
    .action(async ({ output, plainCells, overwrite, json, ...asked }: SheetOptions) => {
      if (!output.toLowerCase().endsWith(".xlsx")) throw new WrongUsage(wantsEnding(output, ".xlsx"));
      refuseUnused(asked);
      const plan = planned(asked);
      const target = { file: output, inputs: [], overwrite };
      await checkTarget(target);
      const made = plainCells
        ? await plainRunSheet(plan, terminal.today())
        : { content: await newFileOf([plan], { calculateOnOpening: true }), leftOpen: [] };
      await writeWhole(target, made.content);
      terminal.note(written(output));
      const leftOpen = made.leftOpen.map((name) => `RETORT.${name}`);
      if (json) terminal.answer(`${JSON.stringify({ file: output, kind: asked.kind, sheet: plan.name, plainCells, leftOpen }, undefined, 2)}\n`);
      if (leftOpen.length > 0) terminal.note(onlyWithAddIn(leftOpen));
    });

/** @throws WrongUsage naming the option that cannot serve */
function planned(asked: TypedOptions): SheetPlan {
  try {
    const options = runSheetOptions(asked);
    heldToChemistry(checkOptions(options));
    return buildRunSheet(options);
  } catch (problem) {
    throw problem instanceof ArgumentProblem ? new WrongUsage(problem.message) : problem;
  }
}
