/** Signs that a terminal acts on, and marks that turn the direction of words or end a line. */
const acting = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;

/** Where the pictures of the signs 0 to 31 begin in Unicode, and that of 127. */
const pictures = 0x2400;
const deletePicture = '\u2421';

/**
 * Text for a terminal or a file: control signs and direction marks, which names in a book may hold, as pictures. Line
 * ends and tabs stay.
 */
export function shownSigns(text: string): string {
  return text.replaceAll(acting, (sign, at: number) => {
    if (sign === '\n' || sign === '\t' || (sign === '\r' && text[at + 1] === '\n')) return sign;
    const code = sign.charCodeAt(0);
    if (code < 0x20) return String.fromCodePoint(pictures + code);
    return code === 0x7f ? deletePicture : `<${hex(sign)}>`;
  });
}

/** The same for JSON, where they are escaped: it still says exactly what the book says. */
export function escapedSigns(json: string): string {
  return json.replaceAll(acting, (sign) => `\\u${hex(sign)}`);
}

function hex(sign: string): string {
  return sign.charCodeAt(0).toString(16).padStart(4, '0');
}
