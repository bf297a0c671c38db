/** SHA-256 (FIPS 180-4) of a text in UTF-8, in lower-case hexadecimal. */
export function sha256(text: string): string {
  const bytes = padded(new TextEncoder().encode(text));
  let hash = START;
  for (let at = 0; at < bytes.byteLength; at += BLOCK) hash = withBlock(hash, new DataView(bytes.buffer, at, BLOCK));
  return hash.map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

/** Bytes. */
const BLOCK = 64;

const PRIMES = primes(64);
/** The first 32 bits of the fractions of the square and cube roots of the first primes. */
const START = eight((at) => fraction(Math.sqrt(PRIMES[at] ?? 0)));
const ROUNDS = PRIMES.map((prime) => fraction(Math.cbrt(prime)));

function primes(count: number): readonly number[] {
  const found: number[] = [];
  for (let next = 2; found.length < count; next += 1) if (found.every((prime) => next % prime > 0)) found.push(next);
  return found;
}

function fraction(root: number): number {
  return Math.floor((root - Math.floor(root)) * 2 ** 32) | 0;
}

/** The text with a bit behind it, and its length in bits in the last 8 bytes. */
function padded(text: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.ceil((text.length + 9) / BLOCK) * BLOCK);
  bytes.set(text);
  bytes[text.length] = 0x80;
  new DataView(bytes.buffer).setBigUint64(bytes.length - 8, BigInt(text.length) * 8n);
  return bytes;
}

type Eight = readonly [number, number, number, number, number, number, number, number];

function eight(of: (at: number) => number): Eight {
  return [of(0), of(1), of(2), of(3), of(4), of(5), of(6), of(7)];
}

function withBlock(hash: Eight, block: DataView): Eight {
  const words = schedule(block);
  let [a, b, c, d, e, f, g, h] = hash;
  for (const [at, round] of ROUNDS.entries()) {
    const one = (h + mix(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + round + (words[at] ?? 0)) | 0;
    const two = (mix(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
  }
  const sum: Eight = [a, b, c, d, e, f, g, h];
  return eight((at) => ((hash[at] ?? 0) + (sum[at] ?? 0)) | 0);
}

function schedule(block: DataView): readonly number[] {
  const words = Array.from({ length: 16 }, (_, at) => block.getInt32(at * 4));
  const word = (at: number) => words[at] ?? 0;
  for (let at = 16; at < 64; at += 1) {
    const early = turned(word(at - 15), 7) ^ turned(word(at - 15), 18) ^ (word(at - 15) >>> 3);
    const late = turned(word(at - 2), 17) ^ turned(word(at - 2), 19) ^ (word(at - 2) >>> 10);
    words.push((word(at - 16) + early + word(at - 7) + late) | 0);
  }
  return words;
}

function mix(word: number, ...bits: readonly [number, number, number]): number {
  return turned(word, bits[0]) ^ turned(word, bits[1]) ^ turned(word, bits[2]);
}

function turned(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits));
}
