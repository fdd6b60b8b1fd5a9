import { decode } from "../../src/cells/decode";
import { BLANK, CellError } from "../../src/inputs/CellValue";

test.each([
  ["null", null, BLANK],
  ["undefined", undefined, BLANK],
  ["empty text", "", BLANK],
  ["zero", 0, 0],
  ["text", "CaCO3", "CaCO3"],
  ["FALSE", false, false],
  ["a formatted number", { type: "FormattedNumber", basicValue: 5 }, 5],
  ["a rich text", { type: "String", basicValue: "35 g" }, "35 g"],
  ["a rich value inside a rich value", { type: "Entity", basicValue: { type: "Double", basicValue: 5 } }, 5],
  ["a rich 0", { type: "Double", basicValue: 0 }, 0],
  ["rich empty text", { type: "String", basicValue: "" }, BLANK],
  ["an error without a code in words", { type: "Error", code: 7 }, BLANK],
  ["what no cell can hold", () => 5, BLANK],
  ["an entity without a basic value", { type: "Entity" }, BLANK],
  ["an error object of the functions runtime", { type: "Error", code: "#N/A", basicValue: "#N/A" }, new CellError("#N/A")],
  ["an error with a code only", { code: "#REF!" }, new CellError("#REF!")],
])("decode takes %s as the host hands it over", (_title, raw, value) => {
  expect(decode(raw)).toEqual(value);
});
