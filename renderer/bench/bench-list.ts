import type { ListCell, ListColumn, ListGroup, ListPaper, ListRow } from '#renderer/print/list-paper.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { namesKey } from './bench-model.ts';
import type { BenchView, BoxView, FootBox, FootRow, HeadView, LineRow, SectionRow } from './view-model.ts';

const unitKey = ' unit';

/** The bench as it is folded on the page: its sections, the lines in sight, and the sums. */
export function benchList(view: BenchView, workshop: Workshop): ListPaper {
  const { recipe, columns } = view;
  const hasHidden = view.rows.some((row) => row.kind === 'section' && row.open && row.more !== '' && !row.all);
  return {
    letterhead: letterheadOf(workshop),
    notes: [
      `${[`House recipe ${recipe.title}`, recipe.aside].filter((words) => words !== '').join(', ')}.`,
      'Underlined figures are given, the others are worked. Sections and lines are those open on the page.',
      ...(hasHidden ? ['Where a section says “more”, it has lines that are not printed.'] : []),
    ],
    names: [
      { key: namesKey, head: 'Line', figure: false },
      { key: unitKey, head: 'Unit', figure: false },
    ],
    columns: columns.map(headOf),
    groups: [...sectionsOf(view), { key: 'sums', head: 'Sums', rows: view.foot.map((row) => footRow(view, row)) }],
    drawn: (keys) =>
      columns.flatMap(({ key, label, section }) =>
        keys.includes(key) ? [{ size: key, called: label, figures: section }] : [],
      ),
  };
}

function headOf({ key, label, size, kit, kits, count, ownRecipe }: HeadView): ListColumn {
  const kitWords = kits.find(({ value }) => value === kit)?.label ?? kit;
  return {
    key,
    head: count === 1 ? label : `${label} × ${count}`,
    under: [size, kitWords, ownRecipe].filter((words) => words !== ''),
    figure: true,
  };
}

/** An open section is a heading over its lines, a closed one a line with its main figure. */
function sectionsOf(view: BenchView): readonly ListGroup[] {
  const groups: { key: string; head?: string; rows: ListRow[] }[] = [];
  for (const row of view.rows) {
    if (row.kind === 'line') groups.at(-1)?.rows.push(lineRow(view, row));
    else if (row.open) groups.push({ key: row.id, head: withWords(row.title, row.all ? '' : row.more), rows: [] });
    else groups.push({ key: row.id, rows: [closedRow(view, row)] });
  }
  return groups;
}

function withWords(title: string, words: string): string {
  return words === '' ? title : `${title} (${words})`;
}

function lineRow(view: BenchView, { id, label, aside, unit }: LineRow): ListRow {
  return named(id, { text: label, aside }, unit, (column) => boxCell(view.boxOf(id, column)));
}

function closedRow(view: BenchView, { id, title, holds }: SectionRow): ListRow {
  return {
    ...named(id, { text: title, aside: holds }, '', (column) => boxCell(view.boxOf(id, column))),
    strong: true,
  };
}

function footRow(view: BenchView, { id, label, unit, total }: FootRow): ListRow {
  const { short = '', figure = '' } = total ?? {};
  const aside = figure === '' && short === '' ? '' : ['job', short, figure].filter((words) => words !== '').join(' ');
  return {
    ...named(id, { text: label, aside }, unit, (column) => footCell(view.footOf(id, column))),
    ...(id === 'gross' && { strong: true }),
  };
}

function named(key: string, name: ListCell, unit: string, cellOf: ListRow['cellOf']): ListRow {
  return {
    key,
    cellOf: (column) => (column === namesKey ? name : column === unitKey ? { text: unit } : cellOf(column)),
  };
}

function boxCell(box: BoxView | undefined): ListCell {
  return box ? { text: box.figure, aside: box.said, given: box.form === 'well' } : { text: '' };
}

/** A size that is not worked yet says so; an empty sum would read as nothing to pay. */
function footCell({ figure, flags, spoken }: FootBox): ListCell {
  const words = flags.map(({ says }) => says).join(', ');
  return { text: figure === '' && words === '' && spoken.includes('not worked yet') ? spoken : figure, aside: words };
}
