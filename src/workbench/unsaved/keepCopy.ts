import { CommandType } from "@univerjs/core";
import { copyKept, copyKeptInPart, copyNotKept, nothingKeptHere } from "../../problems/files/fileProblems";
import { namesIn } from "../../workbook/grid/writing/definedNames";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { heldSheets } from "../../workbook/grid/reading/heldSheets";
import type { Bar } from "../bar/bar";
import { typedContent } from "../typedContent";
import { lackingIn, type Doubts } from "../withDoubts";
import { isFull } from "./database";
import type { KeptCopies } from "./KeptCopies";
import type { SavedContent } from "./SavedContent";

export interface CopyKeeper {
  /** Keeps what is unsaved now, without waiting for a pause. False where that failed, and has been said. */
  now(): Promise<boolean>;
}

interface Keeping extends Pick<Bar, "fileOpen"> {
  readonly engine: GridEngine;
  readonly saved: SavedContent;
  readonly copies: KeptCopies;
  readonly doubts: Doubts;
  /** Says in a word beside the buttons how things stand; "" where everything is saved. */
  readonly tell: (state: string, isProblem: boolean) => void;
}

// A pause in typing long enough that nobody waits for the copy, and short enough that little is lost.
const PAUSE_MS = 1000;
const LONGEST_MS = 10_000;
/** Copying takes no more than this part of the time. */
const SHARE = 10;

/** Keeps a copy of the open sheets in the browser from the first change that is not saved until it is saved. */
export function keepCopy({ engine, saved, copies, doubts, fileOpen, tell }: Keeping): CopyKeeper {
  let kept: { content: string; at: number } | undefined;
  let running: Promise<boolean> = Promise.resolve(true);
  let took = 0;
  let timer: number | undefined;
  let since: number | undefined;

  const keep = async (): Promise<boolean> => {
    const began = performance.now();
    const content = typedContent(engine);
    if (saved.isAll(content)) {
      if (kept !== undefined) await copies.remove(copies.id);
      kept = undefined;
      tell("", false);
    } else if (kept?.content !== content) {
      const at = Date.now();
      const file = fileOpen();
      const isWhole = await copies.keep({ at, sheets: heldSheets(engine), names: namesIn(engine), lacking: lackingIn(doubts) }, file);
      kept = { content, at };
      if (isWhole || file === undefined) tell(copyKept(timeOf(at)), false);
      else tell(copyKeptInPart(timeOf(at), file.name), true);
    }
    took = performance.now() - began;
    return true;
  };
  const now = (): Promise<boolean> => {
    clearTimeout(timer);
    since = undefined;
    // One after the other, so that an older state never comes after a newer one.
    running = running.then(keep).catch((problem: unknown) => {
      tell(whyNot(problem, kept?.at), true);
      return false;
    });
    return running;
  };
  const soon = (): void => {
    since ??= performance.now();
    clearTimeout(timer);
    const pause = Math.max(PAUSE_MS, took * SHARE);
    timer = window.setTimeout(() => void now(), Math.max(0, Math.min(pause, since + Math.max(LONGEST_MS, pause) - performance.now())));
  };
  engine.api.addEvent(engine.api.Event.CommandExecuted, ({ type }) => type === CommandType.MUTATION && soon());
  saved.onSet(() => void now());
  document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && since !== undefined && void now());
  return { now };
}

const timeOf = (at: number): string => new Date(at).toLocaleTimeString("en-GB", { timeStyle: "short" });

const whyNot = (problem: unknown, lastAt: number | undefined): string =>
  isFull(problem) ? copyNotKept(lastAt === undefined ? "" : timeOf(lastAt)) : nothingKeptHere;
