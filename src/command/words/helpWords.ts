// What --help says of each command, and examples that a test runs.

export const ABOUT = "Shares, explains and makes workbooks with Retort's functions, for people with and without the add-in.";
export const ABOUT_EXITS = `
Answers go to standard output, everything else to standard error. Ends with 0 where it was done, with 1 where it was refused
(the sentence names the cells), with 2 where the command was not written as it has to be. Nothing that is read is written over.`;

export const BOOK = "a workbook file, .xlsx";
export const OUTPUT = "the file to be written";
export const OVERWRITE = "write over the file after -o where it is there already; never over what is read";
export const RECALCULATE = "calculate every cell formula here first, with the built functions";
export const JSON_ANSWER = "answer as JSON";
export const KEEP_ERRORS = "take cells in error, and saved values that cannot be checked here, as they are";

export const shareHelp = {
  about: "Shares a workbook with people without the add-in, as values or in built-in functions.",
  as: '"values": copies of the sheets, each with its calculation record, alone in a file; "plain-cells": the whole workbook, which goes on calculating',
  sheet: "with values: share this sheet alone; may be given more than once (default: every sheet in view with a Retort function)",
  newer: "with plain-cells: allow functions newer than Excel 2016",
  examples: [
    "retort share run.xlsx --as values",
    "retort share run.xlsx --as plain-cells -o for-sam.xlsx",
    'retort share run.xlsx --as values --sheet "Charring run" --json',
  ],
} as const;

export const explainHelp = {
  about: "Says how the value of a cell came about: inputs, arithmetic, source.",
  cell: 'the cell, "B7" or "Tin 3!B7"',
  sheet: "the sheet of the cell (default: the first in view)",
  examples: ["retort explain run.xlsx B5", 'retort explain run.xlsx B5 --sheet "Charring run" --json'],
} as const;

export const recordHelp = {
  about: "Lists how every calculated value came about; with -o as a workbook of calculation records.",
  sheet: "record this sheet alone; may be given more than once (default: every sheet in view with a Retort function)",
  examples: ["retort record run.xlsx", "retort record run.xlsx -o record.xlsx", "retort record run.xlsx --json"],
} as const;

export const reportHelp = {
  about: "Writes a report of a sheet that prints on one or two pages.",
  sheet: "the sheet (default: the first in view with a Retort function)",
  recalculate: "calculate every cell formula here first, with the built functions (the default)",
  asSaved: "report the values that the file holds",
  examples: ["retort report run.xlsx -o report.html", 'retort report run.xlsx --sheet "Charring run" -o report.html --json'],
} as const;

export const exampleLines = (examples: readonly string[]): string => `\nExamples:\n${examples.map((one) => `  ${one}`).join("\n")}\n`;
