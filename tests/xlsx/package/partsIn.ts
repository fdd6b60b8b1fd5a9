import JSZip from "jszip";

/** Every part of a workbook file by its name, unpacked by another library than ours. */
export async function partsIn(content: Uint8Array): Promise<Map<string, Buffer>> {
  const { files } = await JSZip.loadAsync(content);
  const found = new Map<string, Buffer>();
  for (const [name, file] of Object.entries(files)) if (!file.dir) found.set(name, await file.async("nodebuffer"));
  return found;
}

export interface PartsDiffering {
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly gone: readonly string[];
}

/** Which parts differ, by their bytes. */
export async function partsDiffering(before: Uint8Array, after: Uint8Array): Promise<PartsDiffering> {
  const [one, other] = [await partsIn(before), await partsIn(after)];
  return {
    changed: [...one].flatMap(([name, bytes]) => (other.has(name) && other.get(name)?.equals(bytes) !== true ? [name] : [])),
    added: [...other.keys()].filter((name) => !one.has(name)),
    gone: [...one.keys()].filter((name) => !other.has(name)),
  };
}

/** The text of a part. */
export const textOf = async (content: Uint8Array, part: string): Promise<string> => (await partsIn(content)).get(part)?.toString("utf8") ?? "";

/** A sheet's markup without the elements of these cells, so that what is left can be held against what was there. */
export const withoutCells = (markup: string, cells: readonly string[]): string =>
  cells.reduce(
    (so, cell) => so.replace(new RegExp(`<(\\w+:)?c [^>]*?r="${cell}"(?:[^>]*/>|[^>]*[^/]>.*?</(?:\\w+:)?c>|>.*?</(?:\\w+:)?c>)`, "s"), ""),
    markup,
  );
