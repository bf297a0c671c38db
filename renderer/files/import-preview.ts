import type { ListImport, RefusedRow } from '#shared-calc/acts/import-list.ts';
import { listHeadings, type ListKind, type TakenRow } from '#shared-calc/acts/import-records.ts';
import type { Change } from '#shared-calc/records/change.ts';

/** A list as it would be imported, for the user to check. */
export interface ImportPreview {
  readonly heading: readonly string[];
  /** Indexes of the fields that hold figures. */
  readonly figures: readonly number[];
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
  readonly refused: readonly RefusedRow[];
  readonly change: Change;
}

/** Which headings a list of records has, in a sentence. */
export function sayHeadings(kind: ListKind): string {
  const { needs, others } = listHeadings(kind);
  return `Headings: ${needs.join(', ')}; and as you have them ${others.join(', ')}.`;
}

export function previewRecords({ taken, refused, change }: ListImport<TakenRow>): ImportPreview {
  return {
    heading: ['row', 'code', 'is', 'with'],
    figures: [0],
    rows: taken.map(({ row, code, is, touches }) => ({ row, cells: [String(row), code, is, touches.join(', ')] })),
    refused,
    change,
  };
}
