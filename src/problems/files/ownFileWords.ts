// What is said where a file is made of the open workbook.

export const noFileHere = (host: string): string => `This ${host} hands no file of the workbook over.`;

/** @param because the host's own words, or its code */
export const fileNotHandedOver = (host: string, because: string): string => `${host} did not hand the workbook over as a file (${because}).`;

export const fileBroken = (host: string): string => `${host} handed over a part of the workbook's file only.`;

export const fileLate = (host: string, seconds: number): string => `${host} did not hand the workbook over as a file within ${seconds} seconds.`;

/** The file may be that of a moment before. */
export const fileOlder = (sheet: string, cell: string): string =>
  `The file that the workbook hands over does not hold what "${sheet}" shows (cell ${cell}): save the workbook once to get a file of its own.`;

export const fileCodeOutOfReach =
  "The part of Retort that writes files could not be fetched. Check the network connection, then share again, or share in this workbook.";

/** How a file reached the user. */
export const openedAsWorkbook = (file: string): string =>
  `It was opened as a new workbook: save it there, as "${file}" perhaps. If no new workbook appears, the browser keeps new windows back: allow them and share again.`;
export const downloadedInstead = (host: string, file: string): string =>
  `${host} did not say that it opened it, so it was also given as a download, ${file}. If it is in neither place, share in this workbook.`;
export const downloadedAsLarge = (host: string, file: string): string =>
  `It is larger than ${host} opens at once, so it was given as a download, ${file}. If it is not there, share in this workbook.`;
