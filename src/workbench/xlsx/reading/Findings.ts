import { keptOnSaving, notShown } from "../../../problems/files/fileProblems";

/** What a file has that is not shown here, gathered while it is read. */
export class Findings {
  private readonly things = new Map<string, { count: number; sheets: Set<string> }>();
  private readonly notes: string[] = [];

  /** @param thing one of those that notShown has words for */
  add(thing: string, sheet: string, count = 1): void {
    const found = this.things.get(thing) ?? { count: 0, sheets: new Set() };
    this.things.set(thing, found);
    found.count += count;
    if (sheet !== "") found.sheets.add(sheet);
  }

  /** Adds a whole sentence. */
  note(sentence: string): void {
    this.notes.push(sentence);
  }

  /** What stays in a file that is saved in place. */
  kept(): readonly string[] {
    return [...this.things].map(([thing, { count, sheets }]) => notShown(thing, count, [...sheets]));
  }

  inWords(): readonly string[] {
    return [...this.kept().map(keptOnSaving), ...this.notes];
  }
}
