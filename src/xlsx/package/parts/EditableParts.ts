import { Uint8ArrayReader, Uint8ArrayWriter, ZipWriter } from "@zip.js/zip.js";
import { DamagedFile, FileParts, keyOf, type PartSource } from "../../parts/FileParts";
import { bytesOf, edited, partText, type Edit, type PartText } from "./partText";

interface Written {
  /** As it is spelled in the archive. */
  readonly name: string;
  readonly content: PartText | Uint8Array<ArrayBuffer>;
}

/** The parts of a workbook file, some of them changed, added or taken away. What is not touched is written as the bytes it came as. */
export class EditableParts implements PartSource {
  private written = new Map<string, Written>();
  private removed = new Set<string>();
  /** Texts that were looked at and not changed. */
  private readonly looked = new Map<string, PartText>();

  private constructor(private readonly original: FileParts) {}

  /** @throws DamagedFile when the content is no zip archive that can be read */
  static async of(content: Uint8Array<ArrayBuffer> | FileParts): Promise<EditableParts> {
    return new EditableParts(content instanceof FileParts ? content : await FileParts.of(content));
  }

  /** True where a part was changed, added or taken away. */
  get isChanged(): boolean {
    return this.written.size > 0 || this.removed.size > 0;
  }

  has(name: string): boolean {
    const key = keyOf(name);
    return this.written.has(key) || (this.original.has(key) && !this.removed.has(key));
  }

  names(): readonly string[] {
    return [...this.original.names().filter((key) => !this.removed.has(key)), ...[...this.written.keys()].filter((key) => !this.original.has(key))];
  }

  async *pieces(name: string): AsyncGenerator<Uint8Array> {
    const key = keyOf(name);
    const written = this.written.get(key);
    if (written !== undefined) yield written.content instanceof Uint8Array ? written.content : bytesOf(written.content);
    else if (!this.removed.has(key)) yield* this.original.pieces(key);
  }

  /** @throws DamagedFile where there is no such part; WorkbookProblem where it is no text that can be changed */
  async text(name: string): Promise<string> {
    return (await this.held(name)).text;
  }

  /** Changes places of a part's text; nothing is written anew where there are no changes. */
  async edit(name: string, edits: readonly Edit[]): Promise<void> {
    if (edits.length === 0) return;
    const { text, encoding } = await this.held(name);
    this.put(name, { text: edited(text, edits), encoding });
  }

  /** Puts a whole part. */
  put(name: string, content: string | PartText | Uint8Array<ArrayBuffer>): void {
    const key = keyOf(name);
    this.looked.delete(key);
    this.removed.delete(key);
    this.written.set(key, { name: this.spelled(key) ?? name, content: typeof content === "string" ? { text: content, encoding: "utf-8" } : content });
  }

  remove(name: string): void {
    const key = keyOf(name);
    this.written.delete(key);
    this.looked.delete(key);
    if (this.original.has(key)) this.removed.add(key);
  }

  /** Does some work on the parts; where it fails, they are as they were before. */
  async whole<T>(work: () => Promise<T>): Promise<T> {
    const [written, removed] = [new Map(this.written), new Set(this.removed)];
    try {
      return await work();
    } catch (problem) {
      this.written = written;
      this.removed = removed;
      throw problem;
    }
  }

  /** A name that no part has: "xl/worksheets/sheet7.xml" for before and behind the number. */
  freeName(before: string, behind: string): string {
    for (let number = 1; ; number++) {
      const name = `${before}${number}${behind}`;
      // One that was taken away may still be named somewhere.
      if (!this.has(name) && !this.original.has(name)) return name;
    }
  }

  /** The file: untouched parts packed as they came, in their order. */
  async bytes(): Promise<Uint8Array<ArrayBuffer>> {
    const file = new ZipWriter(new Uint8ArrayWriter(), { useWebWorkers: false, keepOrder: true, dataDescriptor: false, extendedTimestamp: false });
    const spelling = await this.spelling();
    const left = this.names();
    const folders = new Set<string>();
    for (const listed of this.original.archived()) {
      const { key } = listed;
      if ("folder" in listed) {
        const { folder } = listed;
        // One that its parts have left goes with them.
        const isLeft = this.original.names().some((name) => name.startsWith(key)) && !left.some((name) => name.startsWith(key));
        if (isLeft || folders.has(key)) continue;
        folders.add(key);
        await file.add(folder.filename.replaceAll("\\", "/"), undefined, { directory: true, lastModDate: folder.lastModDate });
        continue;
      }
      if (this.removed.has(key)) continue;
      const [entry, written] = [listed.part, this.written.get(key)];
      const name = spelling(key, entry.filename);
      if (written !== undefined) await file.add(name, new Uint8ArrayReader(contentOf(written)), { lastModDate: entry.lastModDate });
      else await file.add(name, new Uint8ArrayReader(await packed(entry)), { entry, passThrough: true });
    }
    for (const [key, written] of this.written)
      if (!this.original.has(key)) await file.add(written.name, new Uint8ArrayReader(contentOf(written)), { lastModDate: EARLIEST });
    return new Uint8Array(await file.close());
  }

  /** How parts are spelled in the file that is written: as its list of parts spells them, and never with backslashes (ECMA-376 Part 2, 6.2.2). */
  private async spelling(): Promise<(key: string, filename: string) => string> {
    const list = this.has(LIST_OF_PARTS) ? await this.text(LIST_OF_PARTS) : "";
    const listed = [...list.matchAll(/\bPartName\s*=\s*["']\/([^"']+)["']/g)].map(([, name = ""]) => [keyOf(name), name] as const);
    const known = new Map([...listed, [keyOf(LIST_OF_PARTS), LIST_OF_PARTS] as const]);
    return (key, filename) => known.get(key) ?? filename.replaceAll("\\", "/").replace(/^\/+/, "");
  }

  private async held(name: string): Promise<PartText> {
    const key = keyOf(name);
    const written = this.written.get(key)?.content ?? this.looked.get(key);
    if (written !== undefined && !(written instanceof Uint8Array)) return written;
    if (!this.has(name)) throw new DamagedFile("it is not there", name);
    const pieces: Uint8Array[] = [];
    for await (const piece of this.pieces(key)) pieces.push(piece);
    const held = partText(name, joined(pieces));
    this.looked.set(key, held);
    return held;
  }

  private spelled(key: string): string | undefined {
    for (const [known, { filename }] of this.original.packed()) if (known === key) return filename;
    return undefined;
  }
}

const LIST_OF_PARTS = "[Content_Types].xml";

/** The first day an archive can hold, so that a file made twice is the same twice. */
const EARLIEST = new Date(1980, 0, 1);

const contentOf = ({ content }: Written): Uint8Array<ArrayBuffer> => (content instanceof Uint8Array ? content : bytesOf(content));

type Entry = ReturnType<FileParts["packed"]> extends Iterator<[string, infer E]> ? E : never;

/** @throws DamagedFile where the archive breaks off */
async function packed(entry: Entry): Promise<Uint8Array<ArrayBuffer>> {
  try {
    return new Uint8Array(await entry.getData(new Uint8ArrayWriter(), { passThrough: true }));
  } catch (problem) {
    throw new DamagedFile(String(problem), entry.filename);
  }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((so, { length }) => so + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
