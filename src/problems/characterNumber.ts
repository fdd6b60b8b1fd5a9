/** The number from 1 of the character at an index (UTF-16 units), as a person counts: a surrogate pair is one character. */
export const characterNumber = (text: string, index: number): number => Array.from(text.slice(0, index)).length + 1;
