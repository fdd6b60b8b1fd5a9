import fc from "fast-check";
import { answerOf } from "../call";
import { everyLaw } from "./everyLaw";
import { falsified, law, type Call } from "./Law";

const titled = everyLaw.map((one) => [`${one.functions.join(", ")}: ${one.title}`, one] as const);

test.each(titled)("%s", (_title, { functions, hold }) => {
  const called = new Set<string>();
  const call: Call = (name, ...raw) => {
    called.add(name);
    return answerOf(name, ...raw);
  };
  hold(call);
  expect([...called].sort()).toEqual([...functions].sort());
});

describe("a law that could not fail would prove nothing", () => {
  beforeAll(() => fc.configureGlobal({ endOnFailure: true }));
  afterAll(() => fc.resetConfigureGlobal());

  test.each(everyLaw.flatMap((one) => one.functions.map((culprit) => [culprit, one.title, one.hold] as const)))(
    "if %s answered wrongly, this would break: %s",
    (culprit, _title, hold) => {
      expect(() => hold(falsified(answerOf, culprit))).toThrow();
    },
  );

  test("one that takes whatever is answered would be told of", () => {
    const vacuous = law("MOLARMASS")("is a number", (call) => expect(call("MOLARMASS", "H2O")).toEqual(expect.any(Number)));
    expect(() => vacuous.hold(falsified(answerOf, "MOLARMASS"))).not.toThrow();
  });
});
