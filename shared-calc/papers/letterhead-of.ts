import type { Workshop } from '#shared-calc/records/records.ts';

/** The lines of a workshop's letterhead; if empty, its name and place. */
export function letterheadOf({
  letterhead,
  name,
  place,
}: Pick<Workshop, 'letterhead' | 'name' | 'place'>): readonly string[] {
  const lines = letterhead.split('\n').filter((line) => line.trim() !== '');
  return lines.length > 0 ? lines : [name, place].filter((line) => line !== '');
}
