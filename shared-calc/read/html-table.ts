const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** Whether a text is a page or a table as a program puts it on the clipboard, or saves it as a sheet. */
export function isHtmlTable(text: string): boolean {
  return /^\s*</.test(text) && /<tr[\s>]/i.test(text);
}

/** The rows of the tables in an HTML text, each cell as its words. A cell over several columns is one cell and blanks. */
export function readHtmlTable(text: string): readonly (readonly string[])[] {
  return text
    .replaceAll(/<!--.*?-->|<(script|style)\b.*?<\/\1>/gis, '')
    .split(/<tr\b[^>]*>/i)
    .slice(1)
    .map((row) =>
      (row.split(/<\/(?:tr|table)>/i)[0] ?? '')
        .split(/<t[dh]\b/i)
        .slice(1)
        .flatMap(cellsOf),
    );
}

/** `cell` begins with the attributes of its tag. */
function cellsOf(cell: string): readonly string[] {
  const end = cell.indexOf('>');
  const [, span = '1'] = /colspan\s*=\s*"?(\d{1,2})/i.exec(cell.slice(0, end)) ?? [];
  return [wordsIn(cell.slice(end + 1)), ...Array.from({ length: Math.max(0, Number(span) - 1) }, () => '')];
}

function wordsIn(html: string): string {
  return html
    .replaceAll(/<br\b[^>]*>/gi, ' ')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w{1,8}));/gi, (whole, decimal, hexadecimal, name) => {
      if (name !== undefined) return named[String(name).toLowerCase()] ?? String(whole);
      const point = decimal === undefined ? Number.parseInt(String(hexadecimal), 16) : Number(decimal);
      return point <= 0x10ffff ? String.fromCodePoint(point) : String(whole);
    })
    .trim();
}
