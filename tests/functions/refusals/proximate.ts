import type { Refusal } from "./Refusal";

export const proximate: readonly Refusal[] = [
  [
    "=RETORT.VOLATILEMATTER(, 35, 28, 0.05)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    '=RETORT.VOLATILEMATTER("lid", 35, 28, 0.05)',
    '#VALUE! vessel: "lid" is not a weighing. Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 36, 0.05)",
    "#VALUE! after: 36 g is more than before, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ["=RETORT.VOLATILEMATTER(25, 35, 24, 0.05)", "#VALUE! after: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.VOLATILEMATTER(25, 25, 24, 0.05)", "#VALUE! before: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.VOLATILEMATTER(25, 35, , 0.05)", "#VALUE! after: nothing here (blank or 0). Give grams."],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 28, )",
    "#VALUE! moisture: nothing here (blank). Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  ],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 28, 8)",
    "#VALUE! moisture: 8 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
    "percentage for a fraction",
  ],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 28, 1)",
    "#VALUE! moisture: 1 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  ],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 28, -0.05)",
    "#VALUE! moisture: -0.05 is below zero. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  ],
  ['=RETORT.VOLATILEMATTER(25, 35, 28, "8%")', '#VALUE! moisture: "8%" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.VOLATILEMATTER(25, 35, 28, 0.75)",
    "#VALUE! moisture: 0.75 is more than the whole loss on heating, 0.7. Take both from one sample; moisture on the wet basis.",
    "figures that cannot all be of one sample",
  ],
  ['=RETORT.VOLATILEMATTER(25, 35, 28, 0.05, "wet")', '#VALUE! basis: "wet" is not one of "as analysed", "dry".'],
  ['=RETORT.VOLATILEMATTER(25, 35, 28, 0.05, "ash-free")', '#VALUE! basis: "ash-free" is not one of "as analysed", "dry".'],
  ["=RETORT.VOLATILEMATTER(25, 35, 28, #N/A)", "#N/A moisture: the cell given here shows #N/A. Mend that cell first."],
  [
    "=RETORT.ASHFRACTION(, 27, 25.02)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.ASHFRACTION(25, 27, 27.1)",
    "#VALUE! ash: 27.1 g is more than before, 27 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ["=RETORT.ASHFRACTION(25, 27, 24.99)", "#VALUE! ash: 24.99 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.ASHFRACTION(25, 24, 24.9)", "#VALUE! before: 24 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ["=RETORT.ASHFRACTION(25, 27, 0)", "#VALUE! ash: nothing here (blank or 0). Give grams."],
  ['=RETORT.ASHFRACTION(25, 27, "25,02")', '#VALUE! ash: "25,02" is text, not a number. Retype it as a number.'],
  [
    "=RETORT.ASHFRACTION(25, 27, 26.9, 0.2)",
    "#VALUE! moisture: 0.2 and an ash of 0.95 come to more than the sample. Give the moisture of the sample as weighed, or leave it out.",
  ],
  [
    "=RETORT.ASHFRACTION(25, 27, 25.02, 8)",
    "#VALUE! moisture: 8 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
    "percentage for a fraction",
  ],
  [
    '=RETORT.ASHFRACTION(25, 27, 25.02, "dry")',
    '#VALUE! moisture: "dry" is not a moisture content. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.',
  ],
  ["=RETORT.FIXEDCARBON(, 0.75, 0.01)", "#VALUE! moisture: nothing here (blank). Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry."],
  [
    "=RETORT.FIXEDCARBON(5, 0.75, 0.01)",
    "#VALUE! moisture: 5 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
    "percentage for a fraction",
  ],
  ["=RETORT.FIXEDCARBON(0.05, , 0.01)", "#VALUE! volatile: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%."],
  [
    "=RETORT.FIXEDCARBON(0.05, 0, 0.01)",
    "#VALUE! volatile: nothing here (blank or 0). Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
  ],
  [
    "=RETORT.FIXEDCARBON(0.05, 75, 0.01)",
    "#VALUE! volatile: 75 is above 1 and looks like a percentage. Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
  ],
  ["=RETORT.FIXEDCARBON(0.05, 0.75, 0)", '#VALUE! ash: nothing here (blank or 0). Type a fraction such as 0.012 or 1.2%, or "none".'],
  ["=RETORT.FIXEDCARBON(0.05, 0.75, )", '#VALUE! ash: nothing here (blank or 0). Type a fraction such as 0.012 or 1.2%, or "none".'],
  [
    "=RETORT.FIXEDCARBON(0.05, 0.75, 1)",
    '#VALUE! ash: 1 is not below 1 and looks like a percentage. Type a fraction such as 0.012 or 1.2%, or "none".',
  ],
  ["=RETORT.FIXEDCARBON(0.05, 0.75, -0.01)", '#VALUE! ash: -0.01 is below zero. Type a fraction such as 0.012 or 1.2%, or "none".'],
  ['=RETORT.FIXEDCARBON(0.05, 0.75, "no ash")', '#VALUE! ash: "no ash" is not an ash content. Type a fraction such as 0.012 or 1.2%, or "none".'],
  [
    "=RETORT.FIXEDCARBON(0.1, 0.85, 0.06)",
    "#VALUE! volatile: moisture 0.1, volatile 0.85 and ash 0.06 come to more than 1. Check the bases, and moisture counted twice.",
    "figures that cannot all be of one sample",
  ],
  [
    "=RETORT.LOSSONIGNITION(, 35, 34.7)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  [
    "=RETORT.LOSSONIGNITION(30, 35, 35.2)",
    "#VALUE! after: 35.2 g is more than before, 35 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ['=RETORT.LOSSONIGNITION(30, "35 g", 34.7)', '#VALUE! before: "35 g" is not a weighing. Give grams.'],
  ["=RETORT.LOSSONIGNITION(30, 35, )", "#VALUE! after: nothing here (blank or 0). Give grams."],
  ["=RETORT.LOSSONIGNITION(30, 35, 29)", "#VALUE! after: 29 g is not more than vessel, 30 g. Check for swapped cells or a different vessel."],
  ["=RETORT.LOSSONIGNITION(36, 35, 34.7)", "#VALUE! before: 35 g is not more than vessel, 36 g. Check for swapped cells or a different vessel."],
  ["=RETORT.LOSSONIGNITION(30, -35, 34.7)", "#VALUE! before: -35 g is below zero. Give grams."],
  [
    "=RETORT.PROXIMATE(, 1, 0.9, 0.3, 0.1)",
    '#VALUE! vessel: nothing here (blank or 0). Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  ],
  ['=RETORT.PROXIMATE("tared", 0.9, 1, 0.3, 0.1)', "#VALUE! dry: 1 g is more than moist, 0.9 g. Check for swapped cells or regained moisture."],
  [
    '=RETORT.PROXIMATE("tared", 1, 0.3, 0.9, 0.1)',
    "#VALUE! char: 0.9 g is more than dry, 0.3 g. Check for swapped cells or regained moisture.",
    "swapped cells",
  ],
  ['=RETORT.PROXIMATE("tared", 1, 0.9, 0.1, 0.3)', "#VALUE! ash: 0.3 g is more than char, 0.1 g. Check for swapped cells or regained moisture."],
  [
    "=RETORT.PROXIMATE(25, 26, 25.9, 25.3, 24.9)",
    "#VALUE! ash: 24.9 g is not more than vessel, 25 g. Check for swapped cells or a different vessel.",
  ],
  ["=RETORT.PROXIMATE(25, 26, 25, 25, 25)", "#VALUE! dry: 25 g is not more than vessel, 25 g. Check for swapped cells or a different vessel."],
  ['=RETORT.PROXIMATE("tared", 1, 0.9, 0.3, 0)', "#VALUE! ash: nothing here (blank or 0). Give grams."],
  ['=RETORT.PROXIMATE("tared", 1, 0.9, 0.3, "n/a")', '#VALUE! ash: "n/a" is not a weighing. Give grams.'],
  ['=RETORT.PROXIMATE("tared", {1; 2}, 0.9, 0.3, 0.1)', "#VALUE! moist: 2 rows by 1 column given where one cell is wanted. Give one cell."],
  [
    '=RETORT.BASIS.CONVERT(12, "as received", "dry", 0.1)',
    "#VALUE! value: 12 is above 1 and looks like a percentage. Type a share from 0 to 1, such as 0.35 or 35%.",
    "percentage for a fraction",
  ],
  ['=RETORT.BASIS.CONVERT(-0.1, "as received", "dry", 0.1)', "#VALUE! value: -0.1 is below zero. Type a share from 0 to 1, such as 0.35 or 35%."],
  ['=RETORT.BASIS.CONVERT("12%", "as received", "dry", 0.1)', '#VALUE! value: "12%" is text, not a number. Retype it as a number.'],
  [
    '=RETORT.BASIS.CONVERT(0.1, , "dry", 0.1)',
    '#VALUE! from: nothing here (blank or 0). Type one of "as received", "as analysed", "dry", "ash-free".',
  ],
  ['=RETORT.BASIS.CONVERT(0.1, "ar", "dry", 0.1)', '#VALUE! from: "ar" is not one of "as received", "as analysed", "dry", "ash-free".'],
  [
    '=RETORT.BASIS.CONVERT(0.1, "as received", 0, 0.1)',
    '#VALUE! to: nothing here (blank or 0). Type one of "as received", "as analysed", "dry", "ash-free".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "as received", "dry")',
    '#VALUE! moistureReceived: left out, blank or 0, but the basis "as received" needs it. Give the moisture as a fraction; a sample without any is "dry".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "as received", "dry", 0)',
    '#VALUE! moistureReceived: left out, blank or 0, but the basis "as received" needs it. Give the moisture as a fraction; a sample without any is "dry".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "as received", "dry", 10)',
    "#VALUE! moistureReceived: 10 is not below 1 and looks like a percentage. Type a fraction of the moist sample, such as 0.08 or 8%.",
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "dry", "as analysed", 0.1)',
    '#VALUE! moistureAnalysis: left out, blank or 0, but the basis "as analysed" needs it. Give the moisture as a fraction; a sample without any is "dry".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "as received", "as analysed", 0.1)',
    '#VALUE! moistureAnalysis: left out, blank or 0, but the basis "as analysed" needs it. Give the moisture as a fraction; a sample without any is "dry".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "dry", "ash-free")',
    '#VALUE! ash: left out, blank or 0, but the basis "ash-free" needs it. Give the dry-basis ash as a fraction, or "none".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "ash-free", "dry",,, 0)',
    '#VALUE! ash: left out, blank or 0, but the basis "ash-free" needs it. Give the dry-basis ash as a fraction, or "none".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "dry", "ash-free",,, 5)',
    '#VALUE! ash: 5 is not below 1 and looks like a percentage. Type a fraction such as 0.012 or 1.2%, or "none".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.1, "dry", "ash-free",,, "low")',
    '#VALUE! ash: "low" is not an ash content. Type a fraction such as 0.012 or 1.2%, or "none".',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.05, "dry", "ash-free",,, 0.05, "ash")',
    '#VALUE! quantity: ash has no value on the basis "ash-free", which leaves it out. Use "dry" for ash.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.05, "ash-free", "dry",,, 0.05, "ash")',
    '#VALUE! quantity: ash has no value on the basis "ash-free", which leaves it out. Use "dry" for ash.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.08, "as analysed", "dry",, 0.08,, "moisture")',
    '#VALUE! quantity: moisture does not go from "as analysed" to "dry": its own loss changes the basis. For wet and dry use MOISTURE.CONVERT.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.08, "as received", "ash-free", 0.1,, 0.05, "moisture")',
    '#VALUE! quantity: moisture does not go from "as received" to "ash-free": its own loss changes the basis. For wet and dry use MOISTURE.CONVERT.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.005, "as analysed", "dry",, 0.08,, "hydrogen")',
    "#VALUE! value: 0.005 is less hydrogen than the moisture alone holds, 0.008953. If it leaves that water out, leave quantity out.",
  ],
  [
    '=RETORT.BASIS.CONVERT(0.05, "as received", "dry", 0.1,,, "oxygen")',
    "#VALUE! value: 0.05 is less oxygen than the moisture alone holds, 0.08881. If it leaves that water out, leave quantity out.",
  ],
  [
    '=RETORT.BASIS.CONVERT(0.95, "as received", "dry", 0.1)',
    '#VALUE! value: 0.95 would be 1.056 on the basis "dry", and no share is 1 or more. Check value, bases, moisture and ash.',
    "figures that cannot all be of one sample",
  ],
  [
    '=RETORT.BASIS.CONVERT(0.9, "as received", "dry", 0.1)',
    '#VALUE! value: 0.9 would be 1 on the basis "dry", and no share is 1 or more. Check value, bases, moisture and ash.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.96, "dry", "ash-free",,, 0.05)',
    '#VALUE! value: 0.96 would be 1.011 on the basis "ash-free", and no share is 1 or more. Check value, bases, moisture and ash.',
  ],
  [
    '=RETORT.BASIS.CONVERT(0.05, "dry", "as received", 0.1,,, "sulphur")',
    '#VALUE! quantity: "sulphur" is not one of "hydrogen", "oxygen", "ash", "moisture", "other".',
  ],
];
