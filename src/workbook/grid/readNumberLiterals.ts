import { NumberValueObject, ValueObjectFactory } from "@univerjs/engine-formula";

const NUMBER = /^\s*(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i;

let isMended = false;

/**
 * Mends a defect of engine 0.25.1: numbers in a cell formula that are not written the shortest way, such as 1.0, 0.10
 * and 1E-3, are read as text, so that =A1>=1.0 is FALSE for 1. Only numbers in formulas come with a second argument;
 * the text of cells does not. Inside an array constant, {1.0,2}, they are still text.
 */
export function readNumberLiterals(): void {
  if (isMended) return;
  isMended = true;
  const factory = ValueObjectFactory as { create: (typeof ValueObjectFactory)["create"] };
  const original = factory.create;
  factory.create = (raw, ignoresPattern) =>
    typeof raw === "string" && ignoresPattern !== undefined && NUMBER.test(raw)
      ? NumberValueObject.create(Number(raw))
      : original.call(ValueObjectFactory, raw, ignoresPattern);
}
