import type { Workshop } from '#shared-calc/records/records.ts';
import { csvText } from './csv-text.ts';
import type { PickList } from './pick-list.ts';

/** Pick lists as CSV: a row for each thing, in the order of use; amounts with their units, for one build. */
export function pickListCsv(lists: readonly PickList[], workshop: Pick<Workshop, 'decimalComma'>): string {
  const headings = ['size', 'tank', 'builds', 'section', 'what', 'material', 'amount_each_build', 'from', 'brings'];
  const rows = lists.flatMap(({ size, tank, builds, rows: things }) =>
    things.map((row) => [size, tank, builds, row.section, row.label, row.material, row.amount, row.from, row.brings]),
  );
  return csvText([headings, ...rows], workshop);
}
