import type { Lesson } from '#shared-calc/prepare/teach-house.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import { updateRecord } from '#renderer/books/put-record.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok, type Result } from '#shared-calc/result.ts';

/** The house taught: one line's new figure or rule. */
export function teachLine(
  records: Pick<Records, 'line'>,
  recipe: string,
  { line: name, proposed }: Lesson,
): Result<Change, string> {
  const line = [...records.line.values()].find((each) => each.recipe === recipe && each.name === name);
  if (!line || proposed === undefined) return ok(emptyChange(`${name} as it was`));
  return updateRecord(`house taught: ${name} to ${proposed}`, 'line', { from: line, to: { ...line, text: proposed } });
}

export function teachPlantLoss(records: Pick<Records, 'workshop'>, share: number): Result<Change, string> {
  const from = workshopOf(records);
  return updateRecord(`house taught: ${Math.round(share * 1000) / 10} % for plants that fail`, 'workshop', {
    from,
    to: { ...from, plantLossShare: share },
  });
}
