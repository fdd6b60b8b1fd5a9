// Words of letters without digits cannot be taken for a number, a date, a formula or an error; nor can text that opens with
// a letter and has a bracket, or more words than a written-out date and time.
const PLAIN_TEXT = /^\p{L}(\D*$|.*\(|\p{L}*(\P{L}+\p{L}+){3})/u;
const TRUTH_VALUE = /^(true|false)$/i;

/**
 * What to write so that the cell holds exactly this. Excel reads what is written as if typed, so text that it could take
 * for something else ("=1+1", "-", "1/2", "TRUE") goes behind an apostrophe, which Excel keeps out of the value.
 */
export function cellEntry(content: string | number | boolean): string | number | boolean {
  if (typeof content !== "string") return content;
  return PLAIN_TEXT.test(content) && !TRUTH_VALUE.test(content) ? content : `'${content}`;
}
