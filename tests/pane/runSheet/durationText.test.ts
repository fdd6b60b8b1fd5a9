import { durationText } from "../../../src/pane/runSheet/durationText";

test.each([
  [0, "0 min"],
  [45, "45 min"],
  [60, "1 h"],
  [210, "3 h 30 min"],
  [90.5, "1 h 30.5 min"],
])("durationText(%d) reads %s", (minutes, words) => {
  expect(durationText(minutes)).toBe(words.replaceAll(" ", "\u00a0"));
});
