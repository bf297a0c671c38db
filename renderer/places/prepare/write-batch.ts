import { addRecords, removeRecords, updateRecord } from '#renderer/books/put-record.ts';
import { readMeasure } from '#shared-calc/papers/read-measure.ts';
import { readProbeLog } from '#shared-calc/prepare/probe-log.ts';
import { added, type Change } from '#shared-calc/records/change.ts';
import { recordKinds, type Records, type TreatmentBatch } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readDay } from '#renderer/books/day-field.ts';

/** A batch as it is typed. */
export interface BatchTexts {
  readonly material: string;
  readonly litres: string;
  readonly collectedAt: string;
  readonly on: string;
  readonly note: string;
}

interface Treated extends Pick<TreatmentBatch, 'way' | 'aim'> {
  readonly moistened: boolean;
  readonly today: string;
  readonly decimalComma: boolean;
}

export interface BatchMade {
  readonly id: string;
  readonly change: Change;
}

/** A batch that was treated, written down; its label comes from it. */
export function newBatch(
  records: Pick<Records, 'treatmentBatch'>,
  texts: BatchTexts,
  treated: Treated,
): Result<BatchMade, string> {
  const { way, aim, moistened, today, decimalComma } = treated;
  const litres = readMeasure(texts.litres, { name: 'Litres', stored: 'L', low: 0.1, high: 10_000 }, { decimalComma });
  if (!litres.ok) return litres;
  const on = readDay(texts.on, 'Treated on', today);
  if (!on.ok) return on;
  if (texts.collectedAt.trim() === '') return failed('Say where the leaves were collected: it stands on the label.');
  const id = nextBatchId(records.treatmentBatch.keys());
  const note = [moistened ? MOISTENED : '', texts.note.trim()].filter((part) => part !== '').join('; ');
  const batch: TreatmentBatch = {
    id,
    material: texts.material,
    litres: litres.value ?? 0,
    way,
    aim,
    on: on.value,
    collectedAt: texts.collectedAt.trim(),
    log: [],
    note,
  };
  const read = recordKinds.treatmentBatch.safeParse(batch);
  if (!read.success) return failed('This cannot be kept: the words are too long.');
  return ok({
    id,
    change: addRecords(`batch ${id}: ${batch.litres} L of leaves treated`, [added('treatmentBatch', batch)]),
  });
}

const MOISTENED = 'moistened 16 h before';

/** Whether the leaves of a batch were moistened, as its note says. */
export function wasMoistened({ note }: Pick<TreatmentBatch, 'note'>): boolean {
  return note.includes(MOISTENED);
}

/** The batch with the log of its core probe; the first fault of the log where it cannot be read. */
export function withLog(batch: TreatmentBatch, text: string): Result<Change, string> {
  const log = readProbeLog(text);
  if (!log.ok) return failed(log.fault.map(({ row, says }) => `Row ${row}: ${says}`).join(' '));
  const to = { ...batch, log: log.value.map(([minute, degC]): [number, number] => [minute, degC]) };
  return updateRecord(`core log of batch ${batch.id}`, 'treatmentBatch', { from: batch, to });
}

export function withoutBatch(batch: TreatmentBatch): Change {
  return removeRecords(`batch ${batch.id} taken out`, [added('treatmentBatch', batch)]);
}

/** TB-001, TB-002 ... after the highest there is. */
function nextBatchId(ids: Iterable<string>): string {
  const numbers = [...ids].map((id) => Number(/^TB-(\d{1,9})$/.exec(id)?.[1] ?? 0));
  return `TB-${String(Math.max(0, ...numbers) + 1).padStart(3, '0')}`;
}
