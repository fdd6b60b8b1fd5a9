import type { SheetState } from "../../../host/SheetState";
import type { Scene } from "./Scene";

/** Somebody else at work in the same workbook. */
export interface Rival {
  readonly title: string;
  /** Acts as soon as there is something to act on. @returns whether it has */
  act(scene: Scene): boolean;
}

/** Does something to a sheet of the operation's, counted in the order in which they are made. */
const withOwn = (title: string, index: number, act: (scene: Scene, sheet: SheetState) => void): Rival => ({
  title,
  act: (scene) => {
    const sheet = scene.own(index);
    if (sheet !== undefined) act(scene, sheet);
    return sheet !== undefined;
  },
});

export const takesName = (name: string): Rival => ({
  title: `a sheet takes the name "${name}"`,
  act: (scene) => {
    if (scene.host.book.find(name) !== undefined) return false;
    const sheet = scene.host.book.add(name);
    sheet.write(0, 0, "somebody else's");
    scene.keep(sheet);
    return true;
  },
});

export const renames = (what: string, index = 0): Rival =>
  withOwn(`${what} is renamed`, index, (scene, sheet) => scene.rename(sheet, `Theirs ${index}`));

export const typesInto = (what: string, cell: string, index = 0): Rival =>
  withOwn(`${what}, ${cell}, is typed into`, index, (scene, sheet) => scene.type(sheet, cell));

export const renamesAndTypes = (what: string, cell: string, index = 0): Rival =>
  withOwn(`${what} is renamed and ${cell} typed into`, index, (scene, sheet) => {
    scene.rename(sheet, `Theirs ${index}`);
    scene.type(sheet, cell);
  });

export const duplicates = (what: string, cell: string, index = 0): Rival =>
  withOwn(`${what} is duplicated and ${cell} of the duplicate typed into`, index, (scene, sheet) => {
    const duplicate = scene.host.book.copy(sheet);
    scene.keep(duplicate);
    scene.type(duplicate, cell);
  });

export const removes = (what: string, index = 0): Rival =>
  withOwn(`${what} is removed`, index, (scene, sheet) => {
    scene.removed.add(sheet.id);
    scene.host.book.remove(sheet);
  });

/** As where another pane has come to the end with it. */
export const unmarks = (what: string, index = 0): Rival =>
  withOwn(`${what} loses its mark`, index, (scene, sheet) => {
    scene.unmarked.add(sheet.id);
    sheet.names.clear();
  });

/** As where somebody deletes every name of the workbook. */
export const unmarksAll = (what: string, sheets: number): Rival => ({
  title: `${what} lose their marks`,
  act: (scene) => {
    if (scene.ownSheets().length < sheets) return false;
    for (const sheet of scene.ownSheets()) sheet.names.clear();
    return true;
  },
});

/** Types into a cell of the user's own sheet. */
export const typesIntoMine = (cell: string): Rival => ({
  title: `${cell} of the user's sheet is typed into`,
  act: (scene) => {
    scene.type(scene.host.book.sheet("Mine"), cell);
    return true;
  },
});

/** Goes on typing into a cell of the user's own sheet, before every request from then on. */
export const goesOnTyping = (cell: string, times: number): Rival => ({
  title: `${cell} of the user's sheet is typed into ${times} times`,
  act: (scene) => {
    scene.type(scene.host.book.sheet("Mine"), cell);
    return scene.typed.length === times;
  },
});

/** Types into a cell of the user's own sheet, and once more two requests later. */
export const typesAgainLater = (cell: string): Rival => ({
  title: `${cell} of the user's sheet is typed into, and again two requests later`,
  act: (scene) => {
    const [first] = scene.typed;
    if (first !== undefined && scene.requestsBefore < first.before + 2) return false;
    scene.type(scene.host.book.sheet("Mine"), cell);
    return first !== undefined;
  },
});

export const renamesMine: Rival = {
  title: "the user's sheet is renamed",
  act: (scene) => {
    scene.rename(scene.host.book.sheet("Mine"), "Mine no more");
    return true;
  },
};
