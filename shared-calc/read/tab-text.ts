import Papa from 'papaparse';

/** Cells as tab-separated text, a line for each row; a cell with a tab, a line end or a quote is quoted. */
export function writeTabText(rows: readonly (readonly string[])[]): string {
  return Papa.unparse(
    rows.map((row) => [...row]),
    { delimiter: '\t', newline: '\n', skipEmptyLines: false },
  );
}

/**
 * Parses tab-separated text into rows of cells. Any line end works, and one at the very end adds no row. If a quote is
 * never closed, all quotes are literal.
 */
export function readTabText(text: string): readonly (readonly string[])[] {
  const clean = text.replaceAll(/\r\n?/g, '\n').replace(/\n$/, '');
  if (clean === '') return [['']];
  const { data, errors } = Papa.parse<string[]>(clean, { delimiter: '\t', newline: '\n' });
  return errors.length === 0 ? data : clean.split('\n').map((line) => line.split('\t'));
}
