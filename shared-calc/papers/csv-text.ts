import Papa from 'papaparse';

/** A number is written unchanged; words are escaped for programs that would run them as a formula. */
export type CsvCell = string | number | Amount;

/** An exact decimal, such as money, that must keep its digits: `{ amount: '-114.40' }`. */
export interface Amount {
  readonly amount: string;
}

export interface CsvOptions {
  /** Decimal comma: fields are then separated by semicolons. */
  readonly decimalComma?: boolean;
}

/**
 * Records as RFC 4180 text: CRLF after each, fields quoted if needed. Words that a spreadsheet program would run get a
 * leading apostrophe; numbers are left alone.
 */
export function csvText(rows: readonly (readonly CsvCell[])[], { decimalComma = false }: CsvOptions = {}): string {
  const data = rows.map((row) => row.map((cell) => cellText(cell, decimalComma)));
  const text = Papa.unparse(data, {
    newline: '\r\n',
    delimiter: decimalComma ? ';' : ',',
    escapeFormulae: false,
    quotes: (value) => needsQuotes(String(value)),
    skipEmptyLines: false,
  });
  return text === '' ? '' : `${text}\r\n`;
}

/** Quotes too for the signs by which other programs part fields, so that no part of a text becomes a field of its own. */
function needsQuotes(field: string): boolean {
  const isFigure = /^-?\d+,\d+$/.test(field);
  return !isFigure && /[,;|\t"\r\n]|^\s|\s$/.test(field);
}

function cellText(cell: CsvCell, decimalComma: boolean): string {
  if (typeof cell === 'string') return harmless(cell);
  const digits = typeof cell === 'number' ? plainDigits(cell) : cell.amount;
  return decimalComma ? digits.replace('.', ',') : digits;
}

function plainDigits(figure: number): string {
  return Number.isFinite(figure) ? String(figure) : '';
}

/** Characters that some program takes for the start of a formula, in plain and full width. */
const runs = /^[=+\-@\uff1d\uff0b\uff0d\uff20]/;
/** Characters that a program may skip before it: blanks, quotes, and all that show nothing. */
const passedOver = /^[\s"'\p{C}\p{Z}\p{Default_Ignorable_Code_Point}]+/u;
const NUL = String.fromCodePoint(0);
const controlMarks = new Set(['\t', '\r', '\n', NUL]);

/** Words as text only: an apostrophe before what might be run, and NUL as its visible symbol. */
export function harmless(words: string): string {
  const start = words.replaceAll(NUL, '').replace(passedOver, '');
  const shown = words.replaceAll(NUL, '\u2400');
  return runs.test(start) || controlMarks.has(words.charAt(0)) ? `'${shown}` : shown;
}
