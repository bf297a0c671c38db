import { freeId } from '#shared-calc/jobs/find-job.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { LocalValue, Records } from '#shared-calc/records/records.ts';

/** A cell of a job to write over, for one size or for the whole job. */
export interface LocalWrite {
  readonly size: string | undefined;
  readonly line: string;
  /** `undefined` follows the house again; an empty text is a missing figure. */
  readonly text: string | undefined;
  /** Left out: the note stays. */
  readonly note?: string;
  /** Who wants the text. Left out: a new text is ours, and an unchanged text keeps its author. */
  readonly by?: LocalValue['by'] | undefined;
}

/** The change that writes cells of a job over; cells that already have the text are left out. */
export function localChange(records: Records, job: string, puts: readonly LocalWrite[], label: string): Change {
  const known = new Map<string, LocalValue>();
  for (const value of records.localValue.values()) {
    if (value.job === job) known.set(placeOf(value.size, value.line), value);
  }
  const next = new Map(records.localValue);
  for (const put of puts) {
    const from = known.get(placeOf(put.size, put.line));
    if (put.text === undefined) next.delete(from?.id ?? '');
    else if (from) next.set(from.id, writtenOver(from, put.text, put));
    else {
      const value = newLocal(job, put, put.text, next);
      next.set(value.id, value);
    }
  }
  return diffRecords(label, records, { ...records, localValue: next });
}

function writtenOver(from: LocalValue, text: string, { note, by }: LocalWrite): LocalValue {
  return { ...from, text, by: by ?? (from.text === text ? from.by : 'us'), note: note ?? from.note };
}

function newLocal(job: string, put: LocalWrite, text: string, taken: ReadonlyMap<string, unknown>): LocalValue {
  const { size, line, note = '', by = 'us' } = put;
  const id = freeId(`${size ?? job}.${line}`, taken);
  return { id, job, ...(size !== undefined && { size }), line, text, note, by };
}

function placeOf(size: string | undefined, line: string): string {
  return `${size ?? ''}\n${line}`;
}
