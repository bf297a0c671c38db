import type { TreatmentBatch } from '#shared-calc/records/records.ts';

/** How the note of a batch says it. */
export const MOISTENED = 'moistened 16 h before';

/** Whether the leaves of a batch were moistened, as its note says. */
export function wasMoistened({ note }: Pick<TreatmentBatch, 'note'>): boolean {
  return note.includes(MOISTENED);
}
