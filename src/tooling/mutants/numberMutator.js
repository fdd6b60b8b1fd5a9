"use strict";
// The tool leaves numbers alone; here they are limits, constants and tables.

// Further digits are lost in a double, or in how close tests compare.
const MOST_DIGITS = 12;
const PRINTED = new RegExp(`^[0.]*(?:[0-9]\\.?){0,${MOST_DIGITS}}`);
const LAST_SIGNIFICANT_DIGIT = /[1-9](?=[.0]*$)/;

/** One step in the last digit that is not 0, as a slip of the hand would: 0.0005 to 0.0006, 3000 to 4000, 1.9 to 1.8; and 0 to 1. */
const misprinted = (text) => {
  const [mantissa, exponent = ""] = text.replaceAll("_", "").toLowerCase().split(/(?=e)/);
  const [printed] = PRINTED.exec(mantissa);
  const changed = printed.replace(LAST_SIGNIFICANT_DIGIT, (digit) => (digit === "9" ? "8" : String(Number(digit) + 1)));
  return changed === printed ? "1" : changed + mantissa.slice(printed.length) + exponent;
};

const OTHER_BASE = /^0[xob]/i;

const numberMutator = {
  name: "NumberLiteral",
  *mutate(nodePath) {
    const { node, parent } = nodePath;
    const isKey = parent?.type === "ObjectProperty" && parent.key === node;
    if (node.type !== "NumericLiteral" || isKey || parent?.type === "TSLiteralType" || OTHER_BASE.test(node.extra.raw)) return;
    const raw = misprinted(node.extra.raw);
    yield { type: "NumericLiteral", value: Number(raw), extra: { raw, rawValue: Number(raw) } };
  },
};

module.exports = { misprinted, numberMutator };
