import { fittingOptions } from '#renderer/kit/pick-field.tsx';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { BookRow, Box } from './book-table.ts';

/** More are found by writing on. */
const MOST = 60;

/** Help with the text of one field: its faults while it is being written, what is allowed there, a calendar. */
export function fieldHelp<Row extends BookRow>({ row, column }: Box<Row>): RuleHelp {
  const entry = column.entry(row);
  const { options = [], coded = false, days } = column;
  const fitting = (text: string) => fittingOptions(options, text, coded);
  return {
    check: (text) => {
      // While something fits, Enter takes that.
      const isDone = text === entry || text.trim() === '' || fitting(text).length > 0;
      const wrong = isDone ? undefined : faultOf(column.write?.(row, text));
      return { faults: wrong === undefined ? [] : [{ from: 0, to: text.length, says: wrong }], marks: [] };
    },
    complete: (text) =>
      fitting(text === entry ? '' : text)
        .slice(0, MOST)
        .map(({ value, label }) => ({
          from: 0,
          to: text.length,
          insert: coded ? value : label,
          kind: 'choice',
          label: coded ? label : '',
          figure: '',
        })),
    hint: () => undefined,
    ...(days && { days }),
  };
}

function faultOf(written: { readonly ok: boolean; readonly fault?: string } | undefined): string | undefined {
  return written && !written.ok ? written.fault : undefined;
}
