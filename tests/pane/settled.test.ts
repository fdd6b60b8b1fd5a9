import { settled } from "../../src/pane/settled";

describe("settled(task)", () => {
  beforeEach(() => void jest.useFakeTimers());
  afterEach(() => void jest.useRealTimers());

  test("runs once for a burst of calls", () => {
    const task = jest.fn(async () => undefined);
    const call = settled(task);
    for (let times = 0; times < 20; times++) call();
    expect(task).not.toHaveBeenCalled();
    jest.runAllTimers();
    expect(task).toHaveBeenCalledTimes(1);
  });

  test("runs within a fifth of a second of the last call, and not between two key presses", () => {
    const task = jest.fn(async () => undefined);
    const call = settled(task);
    call();
    jest.advanceTimersByTime(50);
    call();
    jest.advanceTimersByTime(50);
    expect(task).not.toHaveBeenCalled();
    jest.advanceTimersByTime(150);
    expect(task).toHaveBeenCalledTimes(1);
  });

  test("tells a slow run that a later one has started", () => {
    const tests: (() => boolean)[] = [];
    const call = settled(async (isLatest) => void tests.push(isLatest));
    call();
    jest.runAllTimers();
    expect(tests.map((isLatest) => isLatest())).toEqual([true]);
    call();
    jest.runAllTimers();
    expect(tests.map((isLatest) => isLatest())).toEqual([false, true]);
  });
});
