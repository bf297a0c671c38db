import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Encodings of lists, by their names in the Encoding Standard. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export type BytesFault =
  | { readonly kind: 'empty-file' }
  | { readonly kind: 'file-too-big'; readonly mostMegabytes: number }
  /** A sheet of a spreadsheet program, a picture, or the like. */
  | { readonly kind: 'not-text' };

/** Larger files are no lists, megabytes. */
const MOST_MEGABYTES = 20;
/** Bytes that are looked at for signs of UTF-16. */
const SAMPLE = 4_096;

/**
 * The encoding of a list from its bytes: by a byte-order mark, by zero bytes on one side of each pair, as UTF-8 if it is
 * valid; any other text is Windows-1252, which has all of Latin-1. Refuses what holds control characters of no text.
 */
export function encodingOf(bytes: Uint8Array): Result<TextEncoding, BytesFault> {
  if (bytes.length === 0) return failed({ kind: 'empty-file' });
  if (bytes.length > MOST_MEGABYTES * 1e6) return failed({ kind: 'file-too-big', mostMegabytes: MOST_MEGABYTES });
  const wide = markedWide(bytes) ?? unmarkedWide(bytes);
  if (wide) return ok(wide);
  if (bytes.some(isNoText)) return failed({ kind: 'not-text' });
  return ok(isUtf8(bytes) ? 'utf-8' : 'windows-1252');
}

function markedWide([first, second]: Uint8Array): TextEncoding | undefined {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : undefined;
}

/** Text of western letters in UTF-16 has zeros on one side of its pairs, and next to none on the other. */
function unmarkedWide(bytes: Uint8Array): TextEncoding | undefined {
  if (bytes.length % 2 !== 0) return undefined;
  const sample = bytes.subarray(0, SAMPLE);
  const many = sample.length / 8;
  const zerosAt = (side: number) => sample.filter((byte, at) => byte === 0 && at % 2 === side).length;
  const [even, odd] = [zerosAt(0), zerosAt(1)];
  if (Math.max(even, odd) <= many || Math.min(even, odd) > many / 20) return undefined;
  const letters = odd > even ? 0 : 1;
  if (sample.some((byte, at) => at % 2 === letters && isNoText(byte))) return undefined;
  return odd > even ? 'utf-16le' : 'utf-16be';
}

/** Control characters that no text has; tab, line ends, form feed and the old end-of-file mark (0x1a) may be there. */
function isNoText(byte: number): boolean {
  return byte < 0x09 || byte === 0x0b || (byte > 0x0d && byte < 0x20 && byte !== 0x1a);
}

/** Valid UTF-8 as to lead and following bytes (RFC 3629). */
function isUtf8(bytes: Uint8Array): boolean {
  let following = 0;
  for (const byte of bytes) {
    if (following > 0) {
      if (byte < 0x80 || byte > 0xbf) return false;
      following -= 1;
    } else if (byte >= 0x80) {
      following = followingOf(byte);
      if (following === 0) return false;
    }
  }
  return following === 0;
}

function followingOf(lead: number): number {
  if (lead >= 0xc2 && lead <= 0xdf) return 1;
  if (lead >= 0xe0 && lead <= 0xef) return 2;
  return lead >= 0xf0 && lead <= 0xf4 ? 3 : 0;
}
