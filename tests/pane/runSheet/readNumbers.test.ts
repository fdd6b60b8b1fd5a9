import { readNumbers } from "../../../src/pane/runSheet/readNumbers";

const BOXES = { minutes: { label: "Minutes", example: "30" }, oven: { label: "Oven" } };

describe("readNumbers(boxes, typed)", () => {
  test("reads every box, outer spaces and a decimal comma allowed", () => {
    expect(readNumbers(BOXES, { minutes: " 7,5 ", oven: "105" })).toEqual({ numbers: { minutes: 7.5, oven: 105 } });
    expect(readNumbers(BOXES, { minutes: "0,125", oven: "-5" })).toEqual({ numbers: { minutes: 0.125, oven: -5 } });
  });

  test("leaves a blank box out where it may be blank", () => {
    expect(readNumbers(BOXES, { minutes: "30", oven: " " })).toEqual({ numbers: { minutes: 30 } });
  });

  test.each([
    ["", "Minutes: nothing here. Type a value such as 30."],
    ["half", 'Minutes: "half" is not a number. Type digits, such as 30 or 0.01.'],
    ["1,440.5", 'Minutes: "1,440.5" is not a number. Type digits, such as 30 or 0.01.'],
    ["1e999", 'Minutes: "1e999" is not a number. Type digits, such as 30 or 0.01.'],
    ["1,440", 'Minutes: "1,440" can be read in two ways. Type 1440 or 1.440.'],
  ])("says what is wrong with %j", (typed, problem) => {
    expect(readNumbers(BOXES, { minutes: typed, oven: "" })).toEqual({ problem, field: "minutes" });
  });
});
