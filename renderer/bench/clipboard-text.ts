/** Boxes as tab-separated text, a line a row; a box that holds a tab, a line end or a quote is quoted. */
export function writeClipboard(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(quoted).join('\t')).join('\n');
}

function quoted(text: string): string {
  return /[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Tab-separated text as rows of boxes. Any line end will do, one at the very end makes no row of its own,
 * and only a quote that opens a box quotes it.
 */
export function readClipboard(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  const clean = text.replaceAll('\r\n', '\n').replaceAll('\r', '\n').replace(/\n$/, '');
  while (at <= clean.length) {
    const box = clean[at] === '"' ? readQuoted(clean, at) : readPlain(clean, at);
    row.push(box.text);
    if (clean[box.end] !== '\t') {
      rows.push(row);
      row = [];
    }
    at = box.end + 1;
  }
  return rows;
}

interface Read {
  readonly text: string;
  /** Of the tab or line end behind it, or the text's length. */
  readonly end: number;
}

function readPlain(text: string, from: number): Read {
  const rest = /[^\t\n]*/y;
  rest.lastIndex = from;
  const found = rest.exec(text)?.[0] ?? '';
  return { text: found, end: from + found.length };
}

/** A quote that is never closed, or is followed by more, is taken as written. */
function readQuoted(text: string, from: number): Read {
  const whole = /"((?:[^"]|"")*)"(?=[\t\n]|$)/y;
  whole.lastIndex = from;
  const found = whole.exec(text);
  if (!found) return readPlain(text, from);
  return { text: (found[1] ?? '').replaceAll('""', '"'), end: from + found[0].length };
}
