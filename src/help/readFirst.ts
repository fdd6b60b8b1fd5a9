/** What holds for every function and is best read once. */
export const readFirst: readonly { readonly heading: string; readonly paragraphs: readonly string[] }[] = [
  {
    heading: "Before you heat anything",
    paragraphs: [
      "The vapours of charring are toxic and flammable: carbon monoxide, hydrogen, methane, methanol, aldehydes and tar. Work outdoors or under a ducted hood, keep flames and sparks away from the vent, never seal a vessel, and carry a carbon monoxide alarm.",
      "Let char cool in the closed vessel: warm char can catch fire in air. Do not char treated, painted or chlorinated material, and do not heat nitrates, perchlorates, peroxides or azides. Hydrates spit when heated fast.",
      "Retort only calculates. Follow your local fire, gas and workplace rules, and ask a licensed or otherwise qualified person about kilns, vents and ducts.",
    ],
  },
  {
    heading: "Blank cells and zeros",
    paragraphs: [
      "Most spreadsheets hand a blank cell to a function as 0, some as nothing or as empty text. One rule holds everywhere, and each reference page says it input by input. What can be told from 0 is nothing given. A 0 is 0 where 0 is a real value, as in a moisture content; where 0 cannot occur, as in a weighing, it is nothing given too. Nothing given is refused in a needed input, and is the same as left out in an optional one.",
      "One exception: an empty vessel left out of a series of weighings means that they are net, so a 0 there is refused. If the balance was zeroed with the vessel on it, type the word tared.",
    ],
  },
  {
    heading: "Whole columns",
    paragraphs: [
      "A function of single cells also takes columns: =RETORT.MOISTURE.WET(A2:A20, B2:B20, C2:C20) fills one cell a row. A row with nothing entered stays empty, a row that cannot be computed shows its own error, and the others stand. A spilled answer cannot stand inside a table; use a plain range.",
    ],
  },
  {
    heading: "When a cell shows an error",
    paragraphs: [
      "#VALUE! means an input must be put right; #N/A means the inputs are fine but no answer follows from them. The sentence behind the error names the input, the value and what to do. Some desktop versions do not show it: select the cell and open This cell in the pane.",
    ],
  },
  {
    heading: "A colleague without the add-in",
    paragraphs: [
      "A workbook keeps the last value of every formula, so a colleague sees your numbers. As soon as something makes their spreadsheet recalculate, even inserting a row, our formulas turn to #NAME?. Share a copy with values instead: the Share tab makes it, with a record of every calculation.",
    ],
  },
];
