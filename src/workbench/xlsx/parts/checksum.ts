const BYTE_VALUES = 256;
const BITS = 8;
// ISO 3309 (CRC-32), as APPNOTE.TXT 4.4.7 has it: the polynomial with its bits turned round.
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: BYTE_VALUES }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < BITS; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/** The CRC-32 of what came `before` (its own answer; 0 at the start) followed by these bytes. */
export function checksum(bytes: Uint8Array, before: number): number {
  let sum = ~before;
  for (const byte of bytes) sum = (sum >>> BITS) ^ (TABLE[(sum ^ byte) & (BYTE_VALUES - 1)] ?? 0);
  return ~sum >>> 0;
}
