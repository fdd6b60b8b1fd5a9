import {
  BooleanNumber,
  CellValueType,
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type Injector,
  type IRange,
  type Workbook,
} from "@univerjs/core";
import { RegisterOtherFormulaService } from "@univerjs/engine-formula";
import { DataValidationCustomFormulaService } from "@univerjs/sheets-data-validation";
import { cellAt } from "../../cellArea";

type OfRule = [unitId: string, sheetId: string, ruleId: string];
type OfCell = [...OfRule, row: number, column: number];

interface Rule {
  readonly uid: string;
  readonly formula1?: string;
  readonly ranges: readonly IRange[];
}

/** The engine's service for rules whose condition is a formula; partly private there. */
interface Service {
  addRule(unitId: string, sheetId: string, rule: Rule): void;
  deleteByRuleId(...rule: OfRule): void;
  getCellFormulaValue(...cell: OfCell): Promise<ICellData | undefined>;
  getCellFormulaValueSync(...cell: OfCell): ICellData | undefined;
  _ensureMaps(unitId: string, sheetId: string): Readonly<Record<"ruleFormulaMap" | "ruleFormulaMap2", Map<string, { readonly formulaId: string }>>>;
}

type Answer = (...cell: OfCell) => boolean;

/**
 * Mends two things of engine 0.25.1. It works out the condition of a rule for each of its cells, as if each held a formula more: half of what a
 * run sheet calculates. Two conditions need no working out, FALSE and whether the cell itself holds a formula. And it goes on calculating a rule
 * that was taken away, because it looks for the rule first.
 */
export function answerPlainRules(injector: Injector): void {
  const service = injector.get(DataValidationCustomFormulaService) as unknown as Service;
  if (typeof service._ensureMaps !== "function") throw new Error("the engine has no rules to answer");
  const books = injector.get(IUniverInstanceService);
  const registered = injector.get(RegisterOtherFormulaService);
  const holdsFormula: Answer = (unitId, sheetId, _rule, row, column) => {
    const cell = books.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(sheetId)?.getCellRaw(row, column);
    return Boolean(cell?.f) || Boolean(cell?.si);
  };
  const plain = new Map<string, Answer>();
  const [add, ask, askNow] = [
    service.addRule.bind(service),
    service.getCellFormulaValue.bind(service),
    service.getCellFormulaValueSync.bind(service),
  ];
  service.addRule = (unitId, sheetId, rule) => {
    const answer = plainAnswer(rule, holdsFormula);
    if (answer === undefined) return add(unitId, sheetId, rule);
    plain.set(keyOf(unitId, sheetId, rule.uid), answer);
  };
  service.deleteByRuleId = (unitId, sheetId, ruleId) => {
    plain.delete(keyOf(unitId, sheetId, ruleId));
    const { ruleFormulaMap, ruleFormulaMap2 } = service._ensureMaps(unitId, sheetId);
    for (const formulas of [ruleFormulaMap, ruleFormulaMap2]) {
      const formula = formulas.get(ruleId);
      if (formula === undefined) continue;
      formulas.delete(ruleId);
      registered.deleteFormula(unitId, sheetId, [formula.formulaId]);
    }
  };
  const answered = (...cell: OfCell): ICellData | undefined => {
    const answer = plain.get(keyOf(cell[0], cell[1], cell[2]));
    return answer && { v: answer(...cell) ? BooleanNumber.TRUE : BooleanNumber.FALSE, t: CellValueType.BOOLEAN };
  };
  service.getCellFormulaValue = async (...cell) => answered(...cell) ?? ask(...cell);
  service.getCellFormulaValueSync = (...cell) => answered(...cell) ?? askNow(...cell);
}

const keyOf = (...rule: OfRule): string => rule.join(" ");

/** How a rule is answered without working anything out; undefined where it has to be. */
function plainAnswer({ formula1 = "", ranges: [first] }: Rule, holdsFormula: Answer): Answer | undefined {
  if (formula1 === "=FALSE") return () => false;
  // A reference moves with the cell that is asked about, from the first cell of the first range.
  return first !== undefined && formula1 === `=ISFORMULA(${cellAt(first.startRow, first.startColumn)})` ? holdsFormula : undefined;
}
