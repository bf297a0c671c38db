import { recordTable } from '#renderer/books/record-table.ts';

export const rateTable = recordTable<'rate'>({
  kind: 'rate',
  label: 'Rates, one a row',
  one: 'rate',
  letters: 'R',
  codeWidth: 7,
  widths: { label: 20 },
  wordsOf: ({ label }) => label,
});

export const marginTable = recordTable<'margin'>({
  kind: 'margin',
  label: 'Margins by quote group, one a row',
  one: 'margin',
  letters: 'G',
  codeWidth: 8,
  widths: { figures: 6, label: 20, taxClass: 8 },
  wordsOf: ({ label }) => label,
  fresh: ({ records }) => ({
    taxClass: [...records.taxClass.keys()][0] ?? '',
    order: Math.max(0, ...[...records.margin.values()].map(({ order }) => order)) + 1,
  }),
  order: (one, other) => one.order - other.order,
});

export const taxTable = recordTable<'taxClass'>({
  kind: 'taxClass',
  label: 'Tax classes, one a row',
  one: 'tax class',
  letters: 'X',
  codeWidth: 7,
  widths: { figures: 6, label: 14 },
  wordsOf: ({ label }) => label,
});

export const supplierTable = recordTable<'supplier'>({
  kind: 'supplier',
  label: 'Suppliers, one a row',
  one: 'supplier',
  letters: 'S',
  codeWidth: 8,
  widths: { name: 15, sells: 14, leadDays: 6.5, tankLeadDays: 6.5 },
  wordsOf: ({ name }) => name,
});

export const closedTable = recordTable<'closedDay'>({
  kind: 'closedDay',
  label: 'Closed days, one run of days a row',
  one: 'closed day',
  letters: 'D',
  codeWidth: 8,
  widths: { label: 20 },
  wordsOf: ({ label, from }) => `${from} ${label}`,
  fresh: ({ today }) => ({ from: today, to: today }),
  order: (one, other) => (one.from < other.from ? -1 : 1),
});
