import { IDescriptionService, IEditorService, IShortcutService, KeyCode } from "@univerjs/preset-sheets-core";
import type { GridEngine } from "../../workbook/grid/GridEngine";

const SUGGESTIONS = "sheet.formula-embedding-editor.search_function.";
const TAKES: readonly unknown[] = [KeyCode.ENTER, KeyCode.TAB];
const BETWEEN_WORDS = /[^\p{L}\d_.]/u;

/**
 * Mends a defect of engine 0.25.1: the names that it offers while a formula is typed stay offered until nothing was typed for 0.3 s, and Enter then
 * puts the first of them in place of the finished formula: =RETORT.… typed fast became =RECEIVED(…), and was not entered. Enter and Tab take a name
 * only while the word before the caret is the one that it was found for; otherwise they enter the formula.
 */
export function takeCurrentSuggestions({ injector }: GridEngine): void {
  const names = injector.get(IDescriptionService);
  const asked = { word: "" };
  const find = names.getSearchListByNameFirstLetter.bind(names);
  names.getSearchListByNameFirstLetter = (word) => {
    asked.word = word;
    return find(word);
  };
  const editors = injector.get(IEditorService);
  const isCurrent = (): boolean => {
    const editor = editors.getFocusEditor();
    const [caret] = editor?.getSelectionRanges() ?? [];
    const text = editor?.getDocumentData().body?.dataStream ?? "";
    const word = text.slice(0, caret?.startOffset).split(BETWEEN_WORDS).at(-1) ?? "";
    return caret?.collapsed === true && word !== "" && word.toUpperCase() === asked.word.toUpperCase();
  };
  const shortcuts = injector.get(IShortcutService);
  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (item) =>
    register(item.id.startsWith(SUGGESTIONS) && TAKES.includes(item.binding) ? { ...item, preconditions: isCurrent } : item);
}
