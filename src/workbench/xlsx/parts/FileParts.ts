import { tooMuchInFile } from "../../../problems/fileProblems";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { checksum } from "./checksum";
import { readDirectory, type Entry } from "./readDirectory";

/** So much text, unpacked, in all that is read of one file; a workbook of 200,000 cells has about a tenth. */
const MOST_BYTES = 300_000_000;

/**
 * The parts of a workbook file, each unpacked when it is read and never kept whole. What unpacks to more than a workbook can have
 * ends in a sentence, however small the file is.
 */
export class FileParts {
  private unpacked = 0;

  private constructor(
    private readonly content: Uint8Array<ArrayBuffer>,
    private readonly entries: ReadonlyMap<string, Entry>,
    private readonly most: number,
  ) {}

  /**
   * @param most bytes that all parts together may unpack to
   * @throws DamagedFile when the content is no zip archive that can be read
   */
  static of(content: Uint8Array<ArrayBuffer>, most = MOST_BYTES): FileParts {
    return new FileParts(content, new Map(damagedWhere(() => readDirectory(content)).map((entry) => [keyOf(entry.name), entry])), most);
  }

  has(name: string): boolean {
    return this.entries.has(keyOf(name));
  }

  /** Every part's name, in small letters: names of parts know no letter case (ECMA-376 Part 2, 6.2.2.3). */
  names(): readonly string[] {
    return [...this.entries.keys()];
  }

  /** The part's bytes piece by piece; nothing where there is no such part. */
  async *pieces(name: string): AsyncGenerator<Uint8Array> {
    const entry = this.entries.get(keyOf(name));
    if (entry === undefined) return;
    // What the file says of itself saves the work where it is true; what comes out is counted all the same.
    if (this.unpacked + entry.unpacked > this.most) throw new WorkbookProblem(tooMuchInFile);
    let sum = 0;
    const data = damagedWhere(() => entry.dataIn(this.content));
    for await (const piece of unpack(data, entry.isDeflated)) {
      this.unpacked += piece.length;
      if (this.unpacked > this.most) throw new WorkbookProblem(tooMuchInFile);
      sum = checksum(piece, sum);
      yield piece;
    }
    if (sum !== entry.checksum) throw new DamagedFile(`${name} does not have its checksum`);
  }
}

/** The file cannot be what it says it is; why is for whoever looks into it, users get a sentence. */
export class DamagedFile extends Error {}

/** What the reading of the archive throws, a look behind the file's end among it, as the damage that it is. */
function damagedWhere<T>(read: () => T): T {
  try {
    return read();
  } catch (problem) {
    throw new DamagedFile(String(problem));
  }
}

const keyOf = (name: string): string => name.replaceAll("\\", "/").replace(/^\/+/, "").toLowerCase();

async function* unpack(data: Uint8Array<ArrayBuffer>, isDeflated: boolean): AsyncGenerator<Uint8Array> {
  if (!isDeflated) return yield data;
  const reader = new Blob([data]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  try {
    for (let read = await next(reader); !read.done; read = await next(reader)) yield read.value;
  } finally {
    // Also where the caller has had enough of it.
    await reader.cancel().catch(() => undefined);
  }
}

async function next(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<ReadableStreamReadResult<Uint8Array>> {
  try {
    return await reader.read();
  } catch (problem) {
    throw new DamagedFile(String(problem));
  }
}
