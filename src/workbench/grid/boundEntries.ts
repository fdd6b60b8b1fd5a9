import { ICommandService, IUniverInstanceService, UniverInstanceType, type DocumentDataModel } from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorBridgeService,
  IEditorService,
  IMEInputCommand,
  InnerPasteCommand,
  InsertCommand,
  KeyCode,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";
import { nothingPasted } from "../../problems/workbook/entryProblems";
import { whyNotTyped } from "../../workbook/grid/typing/entryBounds";
import type { GridEngine } from "../../workbook/grid/GridEngine";

/** What the engine's commands that put text into its editor are told. */
interface TextPutIn {
  readonly unitId?: string;
  readonly body?: { readonly dataStream: string };
  readonly doc?: { readonly body?: { readonly dataStream: string } };
  readonly newText?: string;
  readonly range?: Between;
}

interface Between {
  readonly startOffset: number;
  readonly endOffset: number;
}

const PUT_TEXT_IN: readonly string[] = [InsertCommand, InnerPasteCommand, IMEInputCommand].map(({ id }) => id);
const LINE_END = /\r\n$/;
const CELLS = /[\t\r\n]+/;

/**
 * Keeps from the cells what the engine's editor cannot hold: it colours and lays out a text by recursion, and its stack or the memory of the page
 * gives out. What is typed, dictated or pasted is measured before, and a text that is too long is refused whole, whichever way it comes.
 * @param say tells the person why
 */
export function boundEntries(engine: GridEngine, container: HTMLElement, say: (sentence: string) => void): void {
  const { injector } = engine;
  const books = injector.get(IUniverInstanceService);
  const editors = injector.get(IEditorService);
  const isEditing = (): boolean => injector.get(IEditorBridgeService).isVisible().visible;
  const textIn = (unitId: string): string =>
    books.getUnit<DocumentDataModel>(unitId, UniverInstanceType.UNIVER_DOC)?.getBody()?.dataStream.replace(LINE_END, "") ?? "";
  const isRefused = (id: string, given: unknown): boolean => {
    const { unitId, body, doc, newText, range = editors.getFocusEditor()?.getSelectionRanges()[0] } = (given ?? {}) as TextPutIn;
    if (!PUT_TEXT_IN.includes(id)) return false;
    const editor = unitId ?? editors.getFocusEditor()?.getEditorId() ?? "";
    const added = body?.dataStream ?? doc?.body?.dataStream.replace(LINE_END, "") ?? newText ?? "";
    const before = textIn(editor);
    const { startOffset: from, endOffset: to } = range ?? { startOffset: before.length, endOffset: before.length };
    const why = whyNotTyped(before.slice(0, from) + added + before.slice(to));
    if (why === undefined) return false;
    say(why);
    // Typing puts a blank editor over the cell first; entered so, it would empty the cell.
    setTimeout(() => isEditing() && textIn(editor) === "" && leaveEdit(engine), 0);
    return true;
  };
  const commands = injector.get(ICommandService);
  const [execute, executeNow] = [commands.executeCommand.bind(commands), commands.syncExecuteCommand.bind(commands)];
  commands.executeCommand = async (id, params, options) => (isRefused(id, params) ? (false as never) : execute(id, params, options));
  commands.syncExecuteCommand = (id, params, options) => (isRefused(id, params) ? (false as never) : executeNow(id, params, options));

  // Cells copied elsewhere go to the cells without the editor.
  const onText = (event: Event, data: DataTransfer | null): void => {
    if (isEditing()) return;
    const why = (data?.getData("text/plain") ?? "").split(CELLS).map(whyNotTyped).find((one) => one !== undefined); // prettier-ignore
    if (why === undefined) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    say(nothingPasted(why));
  };
  const isWithin = ({ target }: Event): boolean => container.contains(target as Node | null);
  window.addEventListener("paste", (event) => isWithin(event) && onText(event, event.clipboardData), { capture: true });
  window.addEventListener("drop", (event) => isWithin(event) && onText(event, event.dataTransfer), { capture: true });
}

/** Drops what is being typed, as Escape would, so that the cell keeps what it held. */
function leaveEdit({ api, book }: GridEngine): void {
  api.syncExecuteCommand(SetCellEditVisibleOperation.id, {
    eventType: DeviceInputEventType.Keyboard,
    keycode: KeyCode.ESC,
    visible: false,
    unitId: book.getId(),
  });
}
