import type { Injector, Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { MovedReferences } from "./engine/moveReferences";
import type { ErrorMessages } from "./calling/ErrorMessages";

/** The grid's engine with one workbook open in it. */
export interface GridEngine {
  readonly univer: Univer;
  readonly injector: Injector;
  readonly api: FUniver;
  readonly book: FWorkbook;
  /** Holds the cells that spills fill; the sheets' own cell data do not. */
  readonly spills: FormulaDataModel;
  readonly references: MovedReferences;
  readonly messages: ErrorMessages;
  /**
   * Resolves when every cell shows the result of what was last entered.
   * @param goOn asked again and again meanwhile; throws where nobody wants to wait any longer
   */
  settled(goOn?: () => void): Promise<void>;
  isCalculating(): boolean;
}
