/** "B7" from "'Run 1'!$B$7": the host's addresses name the sheet. */
export const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
