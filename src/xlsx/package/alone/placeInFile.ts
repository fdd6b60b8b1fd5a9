/** The place "Tray!A1" of an address "#Tray!A1", as which some programs write a link within the file; undefined for any other address. */
export function placeInFile(address: string): string | undefined {
  if (!address.startsWith("#")) return undefined;
  try {
    return decodeURIComponent(address.slice(1));
  } catch {
    return address.slice(1);
  }
}
