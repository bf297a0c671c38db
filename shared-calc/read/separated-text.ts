import Papa from 'papaparse';

/** A quoted cell may go on over so many lines. */
const MOST_LINES = 20;

/**
 * The records of a text with this delimiter, every cell as text. A quote that is never closed is a character of its own
 * line: it takes no other line with it.
 */
export function readSeparated(text: string, delimiter: string, most = Infinity): readonly (readonly string[])[] {
  const lines = text.split(/\r\n|\r|\n/);
  if (lines.at(-1) === '') lines.pop();
  const records: (readonly string[])[] = [];
  for (let at = 0; at < lines.length && records.length < most;) {
    const { cells, used } = recordAt(lines, at, delimiter);
    records.push(cells);
    at += used;
  }
  return records;
}

interface ReadRecord {
  readonly cells: readonly string[];
  /** Lines that it takes. */
  readonly used: number;
}

function recordAt(lines: readonly string[], at: number, delimiter: string): ReadRecord {
  const first = lines[at] ?? '';
  const asItIs = { cells: first.split(delimiter), used: 1 };
  if (!first.includes('"')) return asItIs;
  const most = Math.min(MOST_LINES, lines.length - at);
  for (let used = 1; used <= most; used += 1) {
    const { cells, codes } = parseRecord(lines.slice(at, at + used), delimiter);
    const isStray = codes.includes('InvalidQuotes') || swallows(lines.slice(at + 1, at + used), cells, delimiter);
    if (codes.length === 0 && !isStray) return { cells, used };
    // A quote within a quoted cell of one line spoils nothing but itself.
    if (used === 1 && !codes.includes('MissingQuotes')) return { cells, used };
    if (isStray) break;
  }
  return asItIs;
}

function parseRecord(lines: readonly string[], delimiter: string) {
  const { data, errors } = Papa.parse<string[]>(lines.join('\n'), { delimiter, newline: '\n' });
  return { cells: data[0] ?? [], codes: errors.map(({ code }) => code) };
}

/** A line of a quoted cell has no more cells than the record; a record that a stray quote took in has. */
function swallows(lines: readonly string[], cells: readonly string[], delimiter: string): boolean {
  return lines.some((line) => line.split(delimiter).length > cells.length);
}
