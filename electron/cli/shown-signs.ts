/** Beginnings and ends of the ranges that a terminal acts on or that turn the direction of words. */
const ranges = [
  [0x00, 0x1f],
  [0x7f, 0x9f],
  [0x061c, 0x061c],
  [0x200e, 0x200f],
  [0x2028, 0x202e],
  [0x2066, 0x2069],
] as const;

function isActing(code: number): boolean {
  return ranges.some(([from, to]) => code >= from && code <= to);
}

/** Where the pictures of the signs 0 to 31 begin in Unicode, and that of 127. */
const pictures = 0x2400;
const deletePicture = '\u2421';

/**
 * Text for a terminal or a file: control signs and direction marks, which names in a book may hold, as pictures. Line
 * ends and tabs stay.
 */
export function shownSigns(text: string): string {
  return replaceActing(text, (code, next) => {
    if (code === 0x0a || code === 0x09 || (code === 0x0d && next === '\n')) return undefined;
    if (code < 0x20) return String.fromCodePoint(pictures + code);
    return code === 0x7f ? deletePicture : `<${hex(code)}>`;
  });
}

/** The same for JSON, where they are escaped: it still says exactly what the book says. */
export function escapedSigns(json: string): string {
  return replaceActing(json, (code) => `\\u${hex(code)}`);
}

function replaceActing(text: string, write: (code: number, next: string | undefined) => string | undefined): string {
  let written = '';
  let from = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    const instead = isActing(code) ? write(code, text[at + 1]) : undefined;
    if (instead === undefined) continue;
    written += text.slice(from, at) + instead;
    from = at + 1;
  }
  return written + text.slice(from);
}

function hex(code: number): string {
  return code.toString(16).padStart(4, '0');
}
