import { heading, type PaperBlock } from './document.ts';
import { displayFor, titleOf, type MakePaper } from './paper-input.ts';
import { pickListCsv } from './pick-list-csv.ts';
import { pickLists, type PickList } from './pick-list.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';

/** What must be ready on build day, in the order of use, a list for each size. */
export const pickPaper: MakePaper = (input) => {
  const lists = pickLists(input.bench, input.records, displayFor(input));
  return ok({
    data: lists,
    document: { title: `Pick list, ${titleOf(input)}`, blocks: lists.flatMap(blocksOf) },
    csv: pickListCsv(lists, workshopOf(input.records)),
  });
};

function blocksOf({ called, tank, builds, rows }: PickList): readonly PaperBlock[] {
  return [
    heading(`${called}: ${tank}${builds > 1 ? `; this list for each of ${builds}` : ''}`),
    {
      is: 'table',
      head: ['step', 'what', 'material', 'how much', 'from', 'brings'],
      rows: rows.map(({ section, label, material, amount, from, brings }) => [
        section,
        label,
        material.toLowerCase() === label.toLowerCase() ? '' : material,
        amount.replace(/\u00a0each$/, ''),
        from,
        brings,
      ]),
      right: [3],
    },
  ];
}
