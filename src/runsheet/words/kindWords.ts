import type { RunKind } from "../options/RunSheetOptions";

/** What each kind of run is called: on its sheet, and as the sheet's name. */
export const kindWords: Readonly<Record<RunKind, { readonly title: string; readonly sheetName: string }>> = {
  drying: { title: "Drying", sheetName: "Drying run" },
  charring: { title: "Drying, charring", sheetName: "Charring run" },
  ashing: { title: "Drying, charring, ashing", sheetName: "Ashing run" },
  liquids: { title: "Charring, liquids caught", sheetName: "Liquids run" },
  staged: { title: "Drying, staged heating", sheetName: "Staged run" },
  salt: { title: "Salt or mineral, heated", sheetName: "Salt run" },
  balance: { title: "Balance check", sheetName: "Balance check" },
};
