import { text, type Expression } from "../expressions/Expression";

/** Words of what is caught: the apparatus before the fire and after it, and what the product ledger rests on. */
export const caughtWords = {
  before: (number: number): string => `${number} CATCHING, empty`,
  after: (number: number): string => `${number} after the fire`,
  parts: { tube: "Tube and lid, g", trap: "Trap, g" },
  receiver: (number: number): string => `Receiver ${number}, g`,
  total: "Liquids caught, g",
  beforeBox: {
    title: "Before the fire",
    about: "Empty, clean, dry and cold, with its stopper. Leave blank what you do not use. The lid here only if it is not weighed with the vessel.",
  },
  afterBox: { title: "After the fire", about: "The same part with all that it caught, cold, stoppered, wiped dry outside." },
  boxes: {
    gas: {
      label: "Gas measured, g",
      title: "Gas measured",
      prompt: "In grams, where its volume was measured: litres times grams per litre. Blank: gas is the difference, and holds every leak.",
      refusal: "Type the gas in grams as a number of 0 or more, or leave the box blank.",
    },
    water: {
      label: "Water in liquids, %",
      title: "Water in the liquids",
      prompt: "Percent of all that was caught that is water, as measured (titration, distilling trap): 70. Blank: water formed is not told.",
      refusal: "Type percent as a number from 1 to 100, such as 70, or leave the box blank.",
    },
    fed: {
      label: "Fed moist with, %",
      title: "Moisture, if charred moist",
      prompt:
        "Only where the sample was charred without drying: its moisture, percent of the moist weight, measured on another part of it. Blank for a dried sample: its feed water is 0.",
      refusal: "Type percent of the moist weight as a number from 1 to 90, such as 12, or leave the box blank.",
    },
    known: {
      label: "Each % known to ±, %",
      title: "Each % known to ±",
      prompt: "How far those two percentages may be off, in percentage points at 95 %: 1. Blank: both are taken as exact.",
      refusal: "Type percentage points as a number from 0 to 20, such as 1.",
    },
  },
  workings: { fed: "fed to the fire, g", found: "char, liquids and gas found, g", pairs: "parts weighed twice" },
  says: {
    weighEmpty: "weigh before the fire",
    notBefore: "? not weighed empty",
    caught: (grams: Expression) => text`caught ${grams} g`,
    /** What all samples together caught in a part. */
    caughtTogether: (grams: Expression, count: Expression) => text`caught ${grams} g of ${count} samples`,
    none: "nothing that counts",
    lighter: "? lighter than before",
    incomplete: "waits for a second weight",
    complete: "all parts weighed twice",
    byDifference: "blank: by difference",
    measured: "measured: gives a closure",
    waterFormed: "water formed: less feed water",
    waterBlank: "blank: water not told",
    dried: "dried first: feed water is 0",
    moist: "fed moist: feed water counts",
    exact: "blank: taken as exact",
    counted: "counted in the ±",
  },
} as const;
