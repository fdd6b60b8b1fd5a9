import { ExcelWorkbook } from "../../../../src/workbook/excel/ExcelWorkbook";
import type { ExcelHost } from "../../../host/ExcelHost";
import type { Fault } from "../../../host/Faults";
import type { SheetState } from "../../../host/SheetState";
import type { Made, Operation } from "./operations";
import type { Rival } from "./rivals";
import { isLive, Scene } from "./Scene";

/** One operation that met a fault, somebody else at work, or both, and what came of it. */
export interface FaultCase {
  readonly operation: string;
  /** Left out where only somebody else was at work. */
  readonly fault?: Fault;
  /** What somebody else did, and just before which request; left out where nobody was. */
  readonly rival?: string;
  readonly rivalAt?: number;
  readonly outcome: "finished" | "nothing left" | "left and said so";
  /** True where something was typed after the look that comes before a removal, and so went with the sheet. */
  readonly inTheWindow: boolean;
  /** Each of these breaks a promise. */
  readonly broken: readonly string[];
}

/** Actions of each request of the operation, when all goes well. */
export async function requestsOf(host: ExcelHost, operation: Operation): Promise<readonly number[]> {
  const scene = new Scene(host);
  const workbook = new ExcelWorkbook();
  await operation.prepare?.(scene, workbook);
  await host.quiet();
  const actions: number[] = [];
  host.startCounting(() => actions.push(host.requests.at(-1)?.Actions.length ?? 0));
  await operation.run(workbook);
  return actions;
}

/** @returns the case, or undefined where the rival found nothing to do from then on */
export async function faultCase(host: ExcelHost, operation: Operation, fault?: Fault, rival?: Rival, rivalAt = 0): Promise<FaultCase | undefined> {
  const scene = new Scene(host);
  const workbook = new ExcelWorkbook();
  await operation.prepare?.(scene, workbook);
  await host.quiet();
  const broken = new Set<string>();
  const rivalry = { actedAt: -1, isDone: rival === undefined, wholeBefore: false };
  host.startCounting((before) => {
    if (hasLiveValues(scene)) broken.add("a copy named values was live");
    scene.look(before);
    if (rivalry.isDone || before < rivalAt) return;
    rivalry.wholeBefore ||= operation.wrong(scene, { names: scene.ownSheets().map(({ name }) => name), said: "" }) === "";
    rivalry.isDone = rival?.act(scene) === true;
    if (rivalry.actedAt < 0 && (rivalry.isDone || scene.typed.length > 0)) rivalry.actedAt = before;
  });
  if (fault !== undefined) host.faults.plan(fault);
  const { made, said } = await operation.run(workbook).then(
    (done: Made) => ({ made: done, said: done.said }),
    (thrown: Error) => ({ made: undefined, said: thrown.message }),
  );
  await host.quiet();
  host.meanwhile = () => undefined;
  host.faults.none();
  if (rival !== undefined && rivalry.actedAt < 0) return undefined;
  if (hasLiveValues(scene)) broken.add("a copy named values was live");
  const wrong = made === undefined || rivalry.wholeBefore ? "" : operation.wrong(scene, made);
  if (wrong !== "") broken.add(`said to be finished and was not: ${wrong}`);
  const left = scene.ownSheets().filter(({ name }) => made?.names.includes(name) !== true);
  await removeWhatIsOffered(scene, workbook, said, rival === undefined, broken);
  const isMentioned = ({ id, name }: SheetState): boolean =>
    [name, scene.formerNames.get(id)].some((one) => said.includes(`"${one}"`)) || operation.leaves?.(said) === true;
  if (left.some((sheet) => !isMentioned(sheet))) broken.add("something was left unmentioned");
  const mayStand = operation.stands?.(scene) ?? host.book.sheets[0]?.formula(3, 3) !== undefined;
  if (made === undefined && mayStand && !said.includes("D4")) broken.add("something was left unmentioned");
  for (const what of scene.harmed(operation.title.startsWith("remove"))) broken.add(what);
  const lost = scene
    .lost(fault?.answerLost ? fault.after : undefined)
    .filter(({ value }) => !said.includes(String(value)) && !said.toLowerCase().includes("undo brings"));
  if (lost.some(({ inTheWindow }) => !inTheWindow)) broken.add("a typed value was lost");
  return {
    operation: operation.title,
    ...(fault === undefined ? {} : { fault }),
    ...(rival === undefined ? {} : { rival: rival.title, rivalAt: rivalry.actedAt }),
    outcome: made !== undefined ? "finished" : left.length > 0 || mayStand ? "left and said so" : "nothing left",
    inTheWindow: lost.length > 0 || scene.wentInTheWindow(),
    broken: [...broken],
  };
}

/** The workbook answers again: what is offered for removal is ours, and goes unless somebody has changed it. */
async function removeWhatIsOffered(scene: Scene, workbook: ExcelWorkbook, said: string, isAlone: boolean, broken: Set<string>): Promise<void> {
  for (const offered of await workbook.unfinishedSheets()) {
    if (scene.theirs.has(offered.id)) broken.add("somebody's sheet was offered for removal");
    if (said.includes("kept")) broken.add("what was kept is offered for removal");
    const isChanged = scene.isChanged(offered.id);
    const removal = await workbook.removeUnfinished(offered, false);
    if (isChanged && removal === "removed") broken.add("a changed sheet was removed unasked");
    if (isAlone && removal !== "removed") broken.add("what was offered for removal stayed");
  }
}

const hasLiveValues = (scene: Scene): boolean => scene.ownSheets().some((sheet) => sheet.name.includes("values") && isLive(sheet));
