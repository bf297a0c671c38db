import type { TreatmentBatch } from '#shared-calc/records/records.ts';

/** The words for it in the note of a batch. */
export const MOISTENED = 'moistened 16 h before';

/** Whether the leaves of a batch were moistened, from its note. */
export function wasMoistened({ note }: Pick<TreatmentBatch, 'note'>): boolean {
  return note.includes(MOISTENED);
}
