/**
 * A text as the file library takes it. One that reads as the number of a character, such as "_x0041_", would come back as the character, and a
 * carriage return as a line feed (ECMA-376 Part 1, 22.9.2.19; XML 1.0, 2.11).
 */
export const textForLibrary = (text: string): string => text.replace(/_(?=x[0-9A-F]{4}_)/gi, "_x005F_").replace(/\r/g, "_x000D_");
