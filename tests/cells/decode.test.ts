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
  ["an entity without a basic value", { type: "Entity" }, BLANK],
  ["an error object of the functions runtime", { type: "Error", code: "#N/A", basicValue: "#N/A" }, new CellError("#N/A")],
  ["an error with a code only", { code: "#REF!" }, new CellError("#REF!")],
])("decode takes %s as the host hands it over", (_title, raw, value) => {
  expect(decode(raw)).toEqual(value);
});
