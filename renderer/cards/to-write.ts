import type { Column } from '#renderer/kit/table.tsx';

/** An empty column to write in by hand. */
export function toWrite(head: string): Column<unknown> {
  return { head, cell: () => '' };
}
