import { configure, Uint8ArrayReader, ZipReader, type Entry, type FileEntry } from "@zip.js/zip.js";
import { tooMuchInFile } from "../../problems/files/fileProblems";
import { WorkbookProblem } from "../../workbook/Workbook";

/** So much text, unpacked, in all that is read of one file; a workbook of 200,000 cells has about a tenth. */
const MOST_BYTES = 300_000_000;

/** A workbook has a few parts a sheet; an archive of a million small files would be listed for many seconds. */
const MOST_PARTS = 20_000;

// Without workers, whose code would be shipped for the second that a file takes. A piece of packed data can unpack to a thousand times as
// much, which is held at once, so pieces are as small as those that browsers read.
configure({ useWebWorkers: false, chunkSize: 65_536 });

/** What a part holds is proven by its checksum, so what stands before it a second time need not be the same; no name becomes a file's. */
const READING = { checkCrc32: true, checkLocalDirectory: false, filenameValidation: "tolerant" } as const;

export type ListedEntry = { readonly key: string } & ({ readonly part: FileEntry } | { readonly folder: Entry });

/** Where the parts of a workbook file are read from. Names know no letter case. */
export interface PartSource {
  has(name: string): boolean;
  names(): readonly string[];
  /** The part's bytes piece by piece; nothing where there is no such part. */
  pieces(name: string): AsyncGenerator<Uint8Array>;
}

/**
 * The parts of a workbook file, each unpacked when it is read and never kept whole. What unpacks to more than a workbook can have
 * ends in a sentence, however small the file is.
 */
export class FileParts implements PartSource {
  private unpacked = 0;

  private constructor(
    private readonly entries: ReadonlyMap<string, FileEntry>,
    private readonly listed: readonly ListedEntry[],
    private readonly most: number,
  ) {}

  /**
   * @param most bytes that all parts together may unpack to
   * @throws DamagedFile when the content is no zip archive that can be read, holds a locked part, or one name twice
   */
  static async of(content: Uint8Array<ArrayBuffer>, most = MOST_BYTES): Promise<FileParts> {
    const entries = new Map<string, FileEntry>();
    const listed: ListedEntry[] = [];
    const listing = new ZipReader(new Uint8ArrayReader(content), READING).getEntriesGenerator();
    for (let read = await damagedWhere(listing.next()); !read.done; read = await damagedWhere(listing.next())) {
      const entry = read.value;
      const key = keyOf(entry.filename);
      if (entry.encrypted) throw new DamagedFile("it is locked", entry.filename);
      if (listed.length === MOST_PARTS) throw new WorkbookProblem(tooMuchInFile);
      if (key.endsWith("/")) {
        listed.push({ key, folder: entry });
        continue;
      }
      if (entry.directory) throw new DamagedFile("it is marked as a folder", entry.filename);
      // Names that differ by letter case alone are one name too (ECMA-376 Part 2, 6.2.2.3), and nobody can tell which is meant.
      if (entries.has(key)) throw new DamagedFile("it is there twice", entry.filename);
      entries.set(key, entry);
      listed.push({ key, part: entry });
    }
    return new FileParts(entries, listed, most);
  }

  has(name: string): boolean {
    return this.entries.has(keyOf(name));
  }

  /** Every part's name, in small letters: names of parts know no letter case (ECMA-376 Part 2, 6.2.2.3). */
  names(): readonly string[] {
    return [...this.entries.keys()];
  }

  /** The parts as the archive lists them, packed. */
  packed(): IterableIterator<[key: string, entry: FileEntry]> {
    return this.entries.entries();
  }

  /** Everything as the archive lists it, the folders among it, which hold nothing themselves. */
  archived(): readonly ListedEntry[] {
    return this.listed;
  }

  async *pieces(name: string): AsyncGenerator<Uint8Array> {
    const entry = this.entries.get(keyOf(name));
    if (entry === undefined) return;
    // What the file says of itself saves the work where it is true; what comes out is counted all the same.
    if (this.unpacked + entry.uncompressedSize > this.most) throw new WorkbookProblem(tooMuchInFile);
    for await (const piece of unpacked(entry, name)) {
      this.unpacked += piece.length;
      if (this.unpacked > this.most) throw new WorkbookProblem(tooMuchInFile);
      yield piece;
    }
  }
}

/** The file cannot be what it says it is; why is for whoever looks into it, users get a sentence. */
export class DamagedFile extends Error {
  // Told by its name where its code is fetched later.
  override readonly name = "DamagedFile";

  /** @param part the part in which that was found, where it is known */
  constructor(
    why: string,
    readonly part?: string,
  ) {
    super(why);
  }

  /** The same problem, with the part in which it was found; any other problem as it is. */
  static in(part: string, problem: unknown): unknown {
    return problem instanceof DamagedFile && problem.part === undefined ? new DamagedFile(problem.message, part) : problem;
  }
}

/** What the library throws, as the damage of the file that it is. */
async function damagedWhere<T>(reading: Promise<T>, part?: string): Promise<T> {
  try {
    return await reading;
  } catch (problem) {
    throw new DamagedFile(String(problem), part);
  }
}

export const keyOf = (name: string): string => name.replaceAll("\\", "/").replace(/^\/+/, "").toLowerCase();

/** @throws DamagedFile at the end of a part without its checksum or size, and where more comes out than the file says */
async function* unpacked(entry: FileEntry, part: string): AsyncGenerator<Uint8Array> {
  const { readable, writable } = new TransformStream<Uint8Array, Uint8Array>();
  // Where the library fails before it writes, nobody would hear of it.
  entry.getData(writable).catch((problem: unknown) => writable.abort(problem).catch(() => undefined));
  const reader = readable.getReader();
  try {
    for (let read = await damagedWhere(reader.read(), part); !read.done; read = await damagedWhere(reader.read(), part)) yield read.value;
  } finally {
    // Also where the caller has had enough of it.
    await reader.cancel().catch(() => undefined);
  }
}
