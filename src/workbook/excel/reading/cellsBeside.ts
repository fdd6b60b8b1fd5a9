import type { Beside, CellsBeside, DefinedName } from "../../CellsBeside";
import { askForColouring } from "./colouringRules";
import { askForEntryRules } from "./entryRules";
import type { RulesThere } from "./RuleThere";

type Part = Pick<CellsBeside, "names"> & RulesThere;
type Ask = (context: Excel.RequestContext, worksheet: Excel.Worksheet) => () => Promise<Part>;

const PARTS: readonly (readonly [Beside, Ask])[] = [
  ["names", (context, worksheet) => askForNames(context, worksheet)],
  ["colouring", (context, worksheet) => withoutNames(askForColouring(context, worksheet))],
  ["entry", (context, worksheet) => withoutNames(askForEntryRules(context, worksheet))],
];

/**
 * What stands beside the cells of a sheet, in one request where there is none of it. What an Excel does not know, or fails to answer, is told as
 * unread, and the rest is asked for without it.
 * @throws what Excel says where it answers nothing at all, as for a sheet that is not there
 */
export async function cellsBeside(context: Excel.RequestContext, sheet: string): Promise<CellsBeside> {
  const asked = await askTogether(context, sheet).catch(() => undefined);
  const found: { what: Beside; part: Part | undefined }[] = [];
  let failed: unknown;
  for (const [index, [what, ask]] of PARTS.entries()) {
    try {
      const part = asked?.[index] ?? (await askAlone(context, sheet, ask));
      found.push({ what, part: await part() });
    } catch (thrown) {
      failed ??= thrown;
      found.push({ what, part: undefined });
    }
  }
  if (found.every(({ part }) => part === undefined)) throw failed;
  return {
    names: found.flatMap(({ part }) => part?.names ?? []),
    rules: found.flatMap(({ part }) => part?.rules.map(({ rule }) => rule) ?? []),
    unread: found.flatMap(({ what, part }) => (part?.areAll === true ? [] : [what])),
  };
}

async function askTogether(context: Excel.RequestContext, sheet: string): Promise<(() => Promise<Part>)[]> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const asked = PARTS.map(([, ask]) => ask(context, worksheet));
  await context.sync();
  return asked;
}

async function askAlone(context: Excel.RequestContext, sheet: string, ask: Ask): Promise<() => Promise<Part>> {
  const asked = ask(context, context.workbook.worksheets.getItem(sheet));
  await context.sync();
  return asked;
}

const withoutNames =
  (rules: () => Promise<RulesThere>): (() => Promise<Part>) =>
  async () => ({ names: [], ...(await rules()) });

/** Those of the workbook and of this sheet (ExcelApi 1.7). */
function askForNames({ workbook }: Excel.RequestContext, worksheet: Excel.Worksheet): () => Promise<Part> {
  const everywhere = workbook.names.load("items/name,items/formula");
  const here = worksheet.names.load("items/name,items/formula");
  worksheet.load("name");
  return async () => ({
    names: [...everywhere.items.map(named), ...here.items.map((item) => ({ ...named(item), sheet: worksheet.name }))],
    rules: [],
    areAll: true,
  });
}

const named = ({ name, formula }: Excel.NamedItem): DefinedName => ({ name, formula: String(formula) });
