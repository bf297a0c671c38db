import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { BookRow, Box } from './book-table.ts';

/** Help with the text of one field: its faults while it is being written, and the words allowed there. */
export function fieldHelp<Row extends BookRow>({ row, column }: Box<Row>): RuleHelp {
  const entry = column.entry(row);
  const options = column.options ?? [];
  return {
    check: (text) => {
      const wrong = text === entry || text.trim() === '' ? undefined : faultOf(column.write?.(row, text));
      return { faults: wrong === undefined ? [] : [{ from: 0, to: text.length, says: wrong }], marks: [] };
    },
    complete: (text) => {
      const begun = text === entry ? '' : text.trim().toLowerCase();
      const fitting = options.filter((option) => option.toLowerCase().includes(begun));
      return fitting.map((insert) => ({ from: 0, to: text.length, insert, kind: 'choice', label: '', figure: '' }));
    },
    hint: () => undefined,
  };
}

function faultOf(written: { readonly ok: boolean; readonly fault?: string } | undefined): string | undefined {
  return written && !written.ok ? written.fault : undefined;
}
