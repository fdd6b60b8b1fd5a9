import { hostDidNotAnswer, hostTooOld, libraryOutOfReach, openedOutside } from "../../problems/workbook/workbookProblems";
import { HOST } from "./excelProblem";

// Office answers in well under a second; a slow network may take several to load its library.
const PATIENCE_SECONDS = 15;
const MILLISECONDS_A_SECOND = 1000;

/**
 * Waits for Excel. The library never answers when part of it is out of reach, so there is a limit.
 * @returns "" when the workbook can be used, else what is wrong, in words
 */
export async function excelReady(seconds = PATIENCE_SECONDS): Promise<string> {
  if (typeof Office === "undefined") return libraryOutOfReach(HOST);
  const limit = timeLimit(seconds);
  const answer = await Promise.race([Office.onReady(), limit.over]);
  limit.cancel();
  if (answer === undefined) return hostDidNotAnswer(HOST, seconds);
  if (answer.host !== Office.HostType.Excel) return openedOutside(HOST);
  return excelSupports("1.9") ? "" : hostTooOld(HOST);
}

function timeLimit(seconds: number): { over: Promise<undefined>; cancel: () => void } {
  let cancel = (): void => undefined;
  const over = new Promise<undefined>((resolve) => {
    const timer = setTimeout(() => resolve(undefined), seconds * MILLISECONDS_A_SECOND);
    cancel = () => clearTimeout(timer);
  });
  return { over, cancel };
}

/** Versions of the ExcelApi requirement set above the manifest's floor that something here uses when it can. */
type ExcelApiVersion = "1.9" | "1.12" | "1.13" | "1.20";

/** True when this Excel has the version; what needs it is left out where it is missing. */
export const excelSupports = (version: ExcelApiVersion): boolean => Office.context.requirements.isSetSupported("ExcelApi", version);
