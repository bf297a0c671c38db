import { addRecords, removeRecords, updateRecord } from '#renderer/books/put-record.ts';
import { readDay } from '#renderer/books/day-field.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { added, type Change } from '#shared-calc/records/change.ts';
import type { CultureKind, Records, Tub } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';

/** A tub started today. */
export function startTub(records: Pick<Records, 'tub'>, kind: CultureKind, today: Day): Change {
  const numbers = [...records.tub.keys()].map((id) => Number(/^T-(\d{1,9})$/.exec(id)?.[1] ?? 0));
  const id = `T-${String(Math.max(0, ...numbers) + 1).padStart(2, '0')}`;
  const tub: Tub = { id, kind: kind.id, startedOn: today, spare: false, place: '', note: '' };
  return addRecords(`tub ${id} of ${kind.label.toLowerCase()} started`, [added('tub', tub)]);
}

export function removeTub(tub: Tub): Change {
  return removeRecords(`tub ${tub.id} taken down`, [added('tub', tub)]);
}

/** The tub kept for a job, or for whichever comes where there is none. */
export function claimTub(tub: Tub, job: string): Result<Change, string> {
  const { claimedBy: _, ...rest } = tub;
  const to: Tub = job === '' ? rest : { ...rest, claimedBy: job };
  const label = job === '' ? `tub ${tub.id} for whichever job comes` : `tub ${tub.id} kept for ${job}`;
  return updateRecord(label, 'tub', { from: tub, to });
}

export function spareTub(tub: Tub, spare: boolean): Result<Change, string> {
  return updateRecord(`tub ${tub.id} ${spare ? 'is' : 'is no'} spare`, 'tub', { from: tub, to: { ...tub, spare } });
}

export function placeTub(tub: Tub, place: string): Result<Change, string> {
  return updateRecord(`place of tub ${tub.id}`, 'tub', { from: tub, to: { ...tub, place: place.trim() } });
}

export function redateTub(tub: Tub, text: string, today: Day): Result<Change, string> {
  const day = readDay(text, 'Started on', today);
  return day.ok
    ? updateRecord(`tub ${tub.id} started on ${day.value}`, 'tub', { from: tub, to: { ...tub, startedOn: day.value } })
    : failed(day.fault);
}
