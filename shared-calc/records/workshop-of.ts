import type { Records, Workshop } from './records.ts';

/** The one workshop of a book. */
export function workshopOf(records: Pick<Records, 'workshop'>): Workshop {
  const workshop = records.workshop.get('workshop');
  if (!workshop) throw new Error('a book has no workshop');
  return workshop;
}
