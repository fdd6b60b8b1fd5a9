import type { ExcelHost } from "../../../host/ExcelHost";
import { OTHER_KIND, type Fault } from "../../../host/Faults";
import { faultCase, requestsOf, type FaultCase } from "./faultCase";
import { OPERATIONS } from "./operations";

/** The kinds of failure that every request of every operation meets. */
export const KINDS = [
  "GeneralException",
  "ItemAlreadyExists",
  "AccessDenied",
  "InvalidOperationInCellEditMode",
  "ServiceNotAvailable",
  "UndoNotSupported",
  OTHER_KIND,
] as const;

const BOTH = [false, true];

/** Every operation with every fault at each of its requests, and with everybody who may be at work, alone and together with faults. */
export async function faultCases(host: ExcelHost): Promise<readonly FaultCase[]> {
  const cases: FaultCase[] = [];
  const add = (one: FaultCase | undefined): boolean => one !== undefined && cases.push(one) > 0;
  for (const operation of OPERATIONS) {
    const requests = await requestsOf(host, operation);
    for (const fault of requests.flatMap((actions, after) => everyFault(after < operation.actsFrom ? 0 : actions, after)))
      add(await faultCase(host, operation, fault));
    const faults = [undefined, ...requests.flatMap((actions, after) => (after < operation.actsFrom ? [] : faultsBesideRival(actions, after)))];
    for (const rival of operation.rivals) {
      for (const fault of faults) {
        // Before the operation acts it matters only that somebody is there, not when and what fails.
        if (fault?.code === "ItemAlreadyExists" && !rival.title.startsWith("a sheet takes the name")) continue;
        for (let at = fault === undefined ? 0 : operation.actsFrom - 1; ;) {
          const one = await faultCase(host, operation, fault, rival, at);
          if (!add(one)) break;
          at = (one?.rivalAt ?? at) + 1;
        }
      }
    }
  }
  return cases;
}

/** Not done at all, done with the answer lost, or broken off half-way with an answer or without; for once or for good. */
export const everyFault = (actions: number, after: number): Fault[] => [
  ...KINDS.flatMap((code) => BOTH.flatMap((answerLost) => BOTH.map((forGood) => ({ code, after, answerLost, forGood })))),
  ...cuts(actions).flatMap((actionsDone) =>
    BOTH.flatMap((answerLost) => BOTH.map((forGood) => ({ code: "GeneralException", after, answerLost, forGood, actionsDone }))),
  ),
];

/** After which actions a request breaks off: around the making of a sheet, half-way, and just before the last. */
const cuts = (actions: number): number[] =>
  [...new Set([1, 2, 3, 4, 5, 6, Math.floor(actions / 2), actions - 1])].filter((cut) => cut > 0 && cut < actions);

/** The faults that lead to different ways out, to be met together with somebody at work. */
export const faultsBesideRival = (actions: number, after: number): Fault[] => [
  { code: "ServiceNotAvailable", after, answerLost: false, forGood: false },
  { code: "ServiceNotAvailable", after, answerLost: false, forGood: true },
  { code: "ServiceNotAvailable", after, answerLost: true, forGood: false },
  { code: "ItemAlreadyExists", after, answerLost: false, forGood: false },
  { code: "GeneralException", after, answerLost: false, forGood: false, actionsDone: actions - 1 },
];

const GROUPS: readonly (readonly [title: string, is: (one: FaultCase) => boolean])[] = [
  ["alone; host answers again", ({ fault, rival }) => rival === undefined && fault?.forGood === false],
  ["alone; host is gone", ({ fault, rival }) => rival === undefined && fault?.forGood === true],
  ["somebody at work; no fault", ({ fault, rival }) => rival !== undefined && fault === undefined],
  ["somebody at work; host answers again", ({ fault, rival }) => rival !== undefined && fault?.forGood === false],
  ["somebody at work; host is gone", ({ fault, rival }) => rival !== undefined && fault?.forGood === true],
];
const OUTCOMES = ["finished", "nothing left", "left and said so"] as const;

/** The counts, as a table in Markdown. */
export function faultTable(cases: readonly FaultCase[]): string {
  const row = (title: string, some: readonly FaultCase[]): string => {
    const outcomes = OUTCOMES.map((outcome) => some.filter((one) => one.outcome === outcome && !one.inTheWindow && one.broken.length === 0).length);
    const inTheWindow = some.filter((one) => one.inTheWindow && one.broken.length === 0).length;
    return `| ${[title, some.length, ...outcomes, inTheWindow, some.filter(({ broken }) => broken.length > 0).length].join(" | ")} |`;
  };
  const rows = OPERATIONS.flatMap(({ title }) =>
    GROUPS.map(([group, is]) => row(`${title}; ${group}`, cases.filter((one) => one.operation === title && is(one)))),
  ); // prettier-ignore
  return [
    "| operation; who and what | cases | finished all the same | nothing left | left, and said so | typed after the look | promise broken |",
    "| --- | --: | --: | --: | --: | --: | --: |",
    ...rows,
    row("all", cases),
  ].join("\n");
}

/** How often each promise was broken. */
export function brokenPromises(cases: readonly FaultCase[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const promise of cases.flatMap(({ broken }) => broken)) counts[promise] = (counts[promise] ?? 0) + 1;
  return counts;
}
