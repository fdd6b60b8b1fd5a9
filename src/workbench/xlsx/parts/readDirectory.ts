/** One file of a zip archive. */
export interface Entry {
  readonly name: string;
  readonly isDeflated: boolean;
  readonly checksum: number;
  /** The bytes it unpacks to, by its own word. */
  readonly unpacked: number;
  dataIn(content: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer>;
}

// APPNOTE.TXT (zip file format specification) 6.3.10: 4.3.16 the end of the directory, 4.3.12 its entries, 4.3.7 what stands before each file.
const END = 0x06054b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 65_535;
const ENTRY = 0x02014b50;
const ENTRY_BYTES = 46;
const BEFORE_FILE = 0x04034b50;
const BEFORE_FILE_BYTES = 30;
const DEFLATED = 8;
const ENCRYPTED_BIT = 1;
// 4.5.3: sizes that do not fit stand in an extra field of their own.
const ELSEWHERE = 0xffffffff;
const LARGE_SIZES = 0x0001;
const LARGE_BYTES = 8;

/** What a zip archive holds. @throws Error when it is none, or one of several disks, or locked */
export function readDirectory(content: Uint8Array<ArrayBuffer>): Entry[] {
  const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index++) {
    if (view.getUint32(at, true) !== ENTRY) throw new Error(`no directory entry at ${at}`);
    const [nameBytes, extraBytes, commentBytes] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [number, number, number];
    const method = view.getUint16(at + 10, true);
    if (method !== 0 && method !== DEFLATED) throw new Error(`method ${method}`);
    if ((view.getUint16(at + 8, true) & ENCRYPTED_BIT) !== 0) throw new Error("encrypted");
    const name = new TextDecoder().decode(content.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + nameBytes));
    const { unpacked, packed, start } = placeOf(view, at, at + ENTRY_BYTES + nameBytes, extraBytes);
    entries.push({
      name,
      isDeflated: method === DEFLATED,
      checksum: view.getUint32(at + 16, true),
      unpacked,
      dataIn: (file) => dataAt(file, start, packed),
    });
    at += ENTRY_BYTES + nameBytes + extraBytes + commentBytes;
  }
  return entries;
}

function endOfDirectory(view: DataView): number {
  const first = Math.max(0, view.byteLength - END_BYTES - LONGEST_COMMENT);
  for (let at = view.byteLength - END_BYTES; at >= first; at--) if (view.getUint32(at, true) === END) return at;
  throw new Error("no end of a zip archive");
}

/** Where a file's data begin and how long they are, packed and not. */
function placeOf(view: DataView, at: number, extra: number, extraBytes: number): { unpacked: number; packed: number; start: number } {
  // In this order; those that fit are left out of the extra field.
  const sizes = [24, 20, 42].map((offset) => view.getUint32(at + offset, true));
  for (let field = extra; field + 4 <= extra + extraBytes; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== LARGE_SIZES) continue;
    let value = field + 4;
    sizes.forEach((size, index) => {
      if (size !== ELSEWHERE) return;
      sizes[index] = Number(view.getBigUint64(value, true));
      value += LARGE_BYTES;
    });
  }
  const [unpacked = 0, packed = 0, start = 0] = sizes;
  return { unpacked, packed, start };
}

function dataAt(content: Uint8Array<ArrayBuffer>, start: number, packed: number): Uint8Array<ArrayBuffer> {
  const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
  if (view.getUint32(start, true) !== BEFORE_FILE) throw new Error(`no file at ${start}`);
  const data = start + BEFORE_FILE_BYTES + view.getUint16(start + 26, true) + view.getUint16(start + 28, true);
  if (data + packed > content.length) throw new Error("cut off");
  return content.subarray(data, data + packed);
}
