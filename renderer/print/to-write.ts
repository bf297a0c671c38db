import type { Column } from '#renderer/kit/table.tsx';
import css from './paper.module.css';

/** The class of a table with columns to write in. */
export const writeTable = css['toWrite'];

/** An empty column to write in by hand. */
export function toWrite(head: string): Column<unknown> {
  return { head, cell: () => '' };
}
