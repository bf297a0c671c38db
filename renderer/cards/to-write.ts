import type { Column } from '#renderer/kit/table.tsx';

/** A column that is left empty for the pen. */
export function toWrite(head: string): Column<unknown> {
  return { head, cell: () => '' };
}
