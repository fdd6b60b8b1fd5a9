/** What the pane says of the worked guides. */
export const guideWords = {
  heading: "Worked guides",
  about: "Each works one question through by hand and by cell formula, with cautions, and has a run sheet made for it.",
  insert: "Insert its sheet",
  /** For whoever hears the buttons without seeing the titles beside them. */
  insertOf: (title: string): string => `${guideWords.insert}: ${title}`,
  /** After the sheet was inserted, whose cautions the form shows before its button and this list does not. */
  cautionsFirst: "Read its cautions before you start.",
  /** Under the function that a search found first. */
  answers: "Worked through, with a run sheet:",
} as const;
