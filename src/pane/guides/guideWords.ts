/** What the pane says of the worked guides. */
export const guideWords = {
  heading: "Worked guides",
  about: "Each works one question through by hand and by cell formula, with cautions, and has a run sheet made for it.",
  insert: "Insert its sheet",
  /** For whoever hears the buttons without seeing the titles beside them. */
  insertOf: (title: string): string => `${guideWords.insert}: ${title}`,
  /** Over what a search found. */
  answers: "Worked through, with a run sheet:",
} as const;
