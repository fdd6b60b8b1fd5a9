const ONE_BYTE = 0x80;
const TWO_BYTES = 0x800;

/** Bytes of contents as they are sent; letters of some scripts take three each. */
export function bytesOf(contents: unknown): number {
  const text = JSON.stringify(contents);
  let bytes = text.length;
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code >= ONE_BYTE) bytes += code >= TWO_BYTES ? 2 : 1;
  }
  return bytes;
}
