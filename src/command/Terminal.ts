/** What a command says, and to whom. */
export interface Terminal {
  /** The answer: standard output. */
  readonly answer: (text: string) => void;
  /** What is said beside it, line by line: standard error. */
  readonly note: (line: string) => void;
  /** The day as it is printed: "2027-01-15". */
  readonly today: () => string;
}

// Names of sheets and files may hold anything; what would steer a terminal, or turn the direction of its text, is shown as a mark.
// eslint-disable-next-line no-control-regex
const STEERS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

export const printable = (text: string): string => text.replace(STEERS, "\ufffd");
