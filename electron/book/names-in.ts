import type { RecordName } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';

/** Every record that a change touches. */
export function namesIn({ added, updated, removed }: Change): readonly RecordName[] {
  return [
    ...[...added, ...removed].map(({ kind, record }) => ({ kind, id: record.id })),
    ...updated.map(({ kind, from }) => ({ kind, id: from.id })),
  ];
}
