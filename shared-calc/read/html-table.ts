/**
 * The first table of an HTML text as rows of cells, as other programs put it on the clipboard; `undefined` without one.
 * A cell over several columns is followed by empty ones; line breaks in a cell become blanks, as do runs of blanks.
 */
export function readHtmlTable(html: string): readonly (readonly string[])[] | undefined {
  const clean = html.replaceAll(/<!--[\s\S]*?-->|<(style|script|head)\b[\s\S]*?<\/\1\s*>/gi, '');
  const table = /<table\b[^>]*>([\s\S]*?)(?:<\/table\s*>|$)/i.exec(clean)?.[1];
  if (table === undefined) return undefined;
  const rows = [...table.matchAll(/<tr\b[^>]*>([\s\S]*?)(?=<tr\b|<\/tr\s*>|<\/tbody|<\/thead|<\/tfoot|$)/gi)];
  const read = rows.map(([, row = '']) => cellsOf(row)).filter((cells) => cells.length > 0);
  return read.length > 0 ? read : undefined;
}

function cellsOf(row: string): readonly string[] {
  const cells = [...row.matchAll(/<t[dh]\b([^>]*)>([\s\S]*?)(?=<t[dh]\b|<\/t[dh]\s*>|$)/gi)];
  return cells.flatMap(([, attributes = '', inside = '']) => {
    const over = Number(/\bcolspan\s*=\s*["']?(\d{1,3})/i.exec(attributes)?.[1] ?? 1);
    return [textOf(inside), ...Array.from({ length: Math.max(0, over - 1) }, () => '')];
  });
}

function textOf(inside: string): string {
  const words = inside.replaceAll(/<br\b[^>]*>|<\/(?:p|div)\s*>/gi, ' ').replaceAll(/<[^>]*>/g, '');
  return words
    .replaceAll(/&(#x[\da-f]{1,6}|#\d{1,7}|[a-z]{2,8});/gi, (whole, name: string) => entity(name) ?? whole)
    .replaceAll(/\s+/g, ' ')
    .trim();
}

const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
  deg: '°',
  times: '×',
  micro: 'µ',
  minus: '−',
  frac12: '½',
  frac14: '¼',
  frac34: '¾',
  sup2: '²',
  sup3: '³',
  euro: '€',
  pound: '£',
};

function entity(name: string): string | undefined {
  const lower = name.toLowerCase();
  if (!lower.startsWith('#')) return named[lower];
  const code = lower.startsWith('#x') ? Number.parseInt(lower.slice(2), 16) : Number(lower.slice(1));
  return code > 0 && code <= 0x10_ff_ff && !(code >= 0xd8_00 && code <= 0xdf_ff)
    ? String.fromCodePoint(code)
    : undefined;
}

/** Rows of cells as one HTML table; the first row and the first cell of each row are heads where they are names. */
export function writeHtmlTable(rows: readonly HtmlRow[]): string {
  const body = rows.map(
    (cells) =>
      `<tr>${cells.map(({ text, head }) => (head ? `<th>${escaped(text)}</th>` : `<td>${escaped(text)}</td>`)).join('')}</tr>`,
  );
  return `<table>${body.join('')}</table>`;
}

export type HtmlRow = readonly { readonly text: string; readonly head: boolean }[];

const marks: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replaceAll(/[&<>"]/g, (mark) => marks[mark] ?? mark);
}
