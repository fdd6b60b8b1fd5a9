import { ExcelHost } from "../../../host/ExcelHost";
import { loadClientLibrary } from "../../../host/loadClientLibrary";
import { everyFault, faultsBesideRival, KINDS } from "../faults/faultTable";
import { GrowthScene, RIVALS, type GrowthCase } from "./GrowthCase";

jest.setTimeout(300_000);

const host = new ExcelHost();
loadClientLibrary(host);
let scene: GrowthScene;
let requests: readonly number[];
let acting: number;
const cases: GrowthCase[] = [];

beforeAll(async () => {
  scene = await GrowthScene.open(host);
  requests = await scene.requests();
  for (const fault of requests.flatMap((actions, after) => everyFault(actions, after))) cases.push(await scene.meet(fault));
  // The request that does everything has most to do.
  acting = requests.indexOf(Math.max(...requests));
  for (const rival of RIVALS) {
    for (const at of requests.keys()) cases.push(await scene.meet(undefined, rival, at));
    for (const fault of faultsBesideRival(requests[acting] ?? 0, acting)) cases.push(await scene.meet(fault, rival, acting));
  }
});

test("whatever request of a growth fails, and whoever types meanwhile: nothing typed is lost, what is half-way is said, and pressing again finishes it", () => {
  const broken = cases.filter((one) => one.broken.length > 0);
  expect(broken.slice(0, 8).map((one) => JSON.stringify(one))).toEqual([]);
  expect(broken).toHaveLength(0);
});

test("every kind of fault is met at every request, done or not, or broken off half-way, for once or for good", () => {
  expect(requests.length).toBeGreaterThan(4);
  const alone = cases.filter(({ rival }) => rival === undefined);
  expect(alone.filter(({ fault }) => fault?.actionsDone === undefined)).toHaveLength(requests.length * KINDS.length * 4);
  expect(new Set(cases.map(({ outcome }) => outcome))).toEqual(new Set(["finished", "nothing changed", "half-way, and said so"]));
});

test("what is typed is gone only where the answer to the very request before which it was typed was lost", () => {
  const gone = cases.filter(({ inTheWindow }) => inTheWindow);
  expect(gone.length).toBeLessThan(cases.length / 50);
  expect(gone.filter(({ fault }) => fault?.answerLost !== true)).toEqual([]);
});
