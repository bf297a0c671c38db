import type { BookContext } from '#renderer/books/book-hands.ts';
import { choiceField } from '#renderer/books/choice-field.ts';
import { dayField } from '#renderer/books/day-field.ts';
import type { Field } from '#renderer/books/field.ts';
import { figureField } from '#renderer/books/figure-field.ts';
import { moneyField } from '#renderer/books/money-field.ts';
import { recordTable } from '#renderer/books/record-table.ts';
import { weekdaysField } from '#renderer/books/weekdays-field.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import { ok } from '#shared-calc/result.ts';
import type { ClosedDay, Margin, Rate, Supplier, TaxClass } from '#shared-calc/records/records.ts';

export const rateTable = recordTable<'rate'>({
  kind: 'rate',
  label: 'Rates, one a row',
  one: 'rate',
  letters: 'R',
  codeWidth: 7,
  wordsOf: ({ label }) => label,
  blank: (id) => ({ id, label: '', coins: 0, per: 'h' }),
  fields: ({ workshop }) => [
    wordsField<Rate>('label', { title: 'Rate', width: 20, needed: true }),
    moneyField<Rate>('coins', { title: 'Amount' }, workshop),
    choiceField<Rate>({
      key: 'per',
      title: 'for each',
      options: [
        { value: 'h', label: 'hour' },
        { value: 'km', label: 'km' },
      ],
      width: 6,
      get: ({ per }) => per,
      put: (rate, word) => ({ ...rate, per: word === 'km' ? 'km' : 'h' }),
    }),
  ],
});

export const marginTable = recordTable<'margin'>({
  kind: 'margin',
  label: 'Margins by quote group, one a row',
  one: 'margin',
  letters: 'G',
  codeWidth: 8,
  wordsOf: ({ label }) => label,
  blank: (id, { records }) => ({
    id,
    label: '',
    share: 0.3,
    taxClass: [...records.taxClass.keys()][0] ?? '',
    order: Math.max(0, ...[...records.margin.values()].map(({ order }) => order)) + 1,
  }),
  order: (one, other) => one.order - other.order,
  fields: marginFields,
});

function marginFields({ records, display }: BookContext): readonly Field<Margin>[] {
  return [
    wordsField<Margin>('label', { title: 'Group, as the quote says it', width: 20, needed: true }),
    figureField<Margin>(
      'share',
      { name: 'Margin', title: 'Margin of the price', stored: 'share', shown: '%', low: 0, high: 0.95, width: 6 },
      display,
    ),
    choiceField<Margin>({
      key: 'taxClass',
      title: 'Tax class',
      options: [...records.taxClass.values()].map(({ id, label }) => ({ value: id, label })),
      width: 8,
      get: ({ taxClass }) => taxClass,
      put: (margin, word) => ({ ...margin, taxClass: word ?? margin.taxClass }),
    }),
    figureField<Margin>(
      'order',
      { name: 'Place', title: 'Place on the quote', stored: 'each', whole: true, low: 0, high: 999, width: 5.5 },
      display,
    ),
  ];
}

export const taxTable = recordTable<'taxClass'>({
  kind: 'taxClass',
  label: 'Tax classes, one a row',
  one: 'tax class',
  letters: 'X',
  codeWidth: 7,
  wordsOf: ({ label }) => label,
  blank: (id) => ({ id, label: '', share: 0 }),
  fields: ({ display }) => [
    wordsField<TaxClass>('label', { title: 'Class', width: 14, needed: true }),
    figureField<TaxClass>('share', { name: 'Tax', stored: 'share', shown: '%', low: 0, high: 1, width: 6 }, display),
  ],
});

export const supplierTable = recordTable<'supplier'>({
  kind: 'supplier',
  label: 'Suppliers, one a row',
  one: 'supplier',
  letters: 'S',
  codeWidth: 8,
  wordsOf: ({ name }) => name,
  blank: (id) => ({ id, name: '', sells: '', leadDays: 3, carriageCoins: 0, note: '' }),
  fields: supplierFields,
});

function supplierFields({ workshop, display }: BookContext): readonly Field<Supplier>[] {
  const days = { stored: 'each', whole: true, low: 0, high: 365, width: 6.5 };
  return [
    wordsField<Supplier>('name', { title: 'Supplier', width: 15, needed: true }),
    wordsField<Supplier>('sells', { title: 'Sells', width: 14 }),
    figureField<Supplier>('leadDays', { name: 'Lead', title: 'Lead, working days', ...days }, display),
    figureField<Supplier>(
      'tankLeadDays',
      { name: 'Lead of tanks', title: 'Lead of tanks, working days', ...days, mayBeEmpty: true },
      display,
    ),
    moneyField<Supplier>('carriageCoins', { title: 'Carriage' }, workshop),
    moneyField<Supplier>('freeFromCoins', { title: 'Free from', mayBeEmpty: true }, workshop),
    moneyField<Supplier>('minimumCoins', { title: 'Minimum', mayBeEmpty: true }, workshop),
    weekdaysField,
    wordsField<Supplier>('note', { title: 'Note', width: 20 }),
  ];
}

export const closedTable = recordTable<'closedDay'>({
  kind: 'closedDay',
  label: 'Closed days, one run of days a row',
  one: 'closed day',
  letters: 'D',
  codeWidth: 8,
  wordsOf: ({ label, from }) => `${from} ${label}`,
  blank: (id, { today }) => ({ id, from: today, to: today, label: '' }),
  order: (one, other) => (one.from < other.from ? -1 : 1),
  misfit: ({ from, to }) => (from > to ? `From ${from} to ${to} runs backward.` : undefined),
  fields: ({ today }) => [
    firstDayField(today),
    dayField<ClosedDay>('to', 'Last day', today),
    wordsField<ClosedDay>('label', { title: 'Why', width: 20 }),
  ],
});

/** A first day past the last takes that with it. */
function firstDayField(today: string): Field<ClosedDay> {
  const field = dayField<ClosedDay>('from', 'First day', today);
  return {
    ...field,
    read: (text, closed) => {
      const read = field.read(text, closed);
      return read.ok && read.value.from > read.value.to ? ok({ ...read.value, to: read.value.from }) : read;
    },
  };
}
