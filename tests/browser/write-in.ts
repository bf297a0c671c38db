import { openBook } from '#electron/book/open-book.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import type { LocalValue, Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { pageDay } from './served-book.ts';

/** A change based on the current book. */
export type Act = (records: Records) => Result<Change, { readonly kind: string }>;

/** Writes edits to a book's file, one after the other, with no page open on it. */
export function writeIn(file: string, acts: readonly Act[]): void {
  const opened = openBook(file, { today: pageDay, backups: false });
  if (!opened.ok) throw new Error(`not opened: ${opened.fault.kind}`);
  const book = opened.value;
  for (const act of acts) {
    const change = act(book.records());
    const done = change.ok ? book.apply(change.value, book.revision()) : change;
    if (!done.ok) throw new Error(`not written: ${done.fault.kind}`);
  }
  book.close();
}

/** Reads from a book's file. */
export function readIn<T>(file: string, read: (records: Records) => T): T {
  const opened = openBook(file, { today: pageDay, backups: false });
  if (!opened.ok) throw new Error(`not opened: ${opened.fault.kind}`);
  const value = read(opened.value.records());
  opened.value.close();
  return value;
}

/** The sizes of the demo's job. */
export function withSizes(tanks: readonly string[]): Act {
  return (records) =>
    setSizes(
      records,
      'J01',
      tanks.map((tank) => ({ tank, count: 1 })),
    );
}

/** Values of the demo's job: `drain_gap` for the whole job, `T07.drain_gap` for one size. */
export function withValues(values: Readonly<Record<string, string>>): Act {
  const writings = Object.entries(values).map(([name, text]) => {
    const [line = '', column] = name.split('.').toReversed();
    return { line, text, ...(column !== undefined && { column }) };
  });
  return (records) => setValues(records, { job: 'J01', writings, by: 'us' });
}

/** Values written past the checks that would refuse them, as an older or another program may have left them. */
export function withRawValues(values: readonly Pick<LocalValue, 'size' | 'line' | 'text'>[]): Act {
  const added = values.map((value, at) => ({
    kind: 'localValue' as const,
    record: { ...value, id: `raw-${at}`, job: 'J01', note: '', by: 'us' as const },
  }));
  return () => ({ ok: true, value: { ...emptyChange('raw values'), added } });
}
