import type { BookContext, BookHands } from '#renderer/books/book-hands.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { choiceField, plainOptions } from '#renderer/books/choice-field.ts';
import type { Field } from '#renderer/books/field.ts';
import { figureField, type FigureParts } from '#renderer/books/figure-field.ts';
import { recordTable } from '#renderer/books/record-table.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { shownUnit } from '#shared-calc/quantity/shown-unit.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';

/** Kinds of culture: how they breed, what a tub holds and gives, and the warmth they bear. */
export function cultureBookPlace(hands: BookHands): (route: Route) => PlaceView {
  return bookPlace({ hands, table: cultureTable, aside: 'kinds of culture; their tubs stand on the culture board' });
}

const breedings = ['females only', 'two sexes'] as const;

const cultureTable = recordTable<'cultureKind'>({
  kind: 'cultureKind',
  label: 'Culture book, one kind of culture a row',
  one: 'culture',
  letters: 'C',
  wordsOf: ({ label }) => label,
  blank: (id) => ({
    id,
    label: '',
    breeding: 'two sexes',
    tubL: 1.5,
    capacity: 1000,
    harvestShare: 0.5,
    harvestEveryDays: 14,
    yield: 100,
    firstHarvestDays: 28,
    lowestC: 18,
    highestC: 26,
    founders: 50,
    foundersNewLine: 11,
    note: '',
  }),
  fields: cultureFields,
  misfit: cultureMisfit,
});

function cultureFields({ display }: BookContext): readonly Field<CultureKind>[] {
  const warmth = { stored: 'degC', shown: shownUnit('degC', display), low: -10, high: 60, width: 5 };
  const count = { stored: 'each', whole: true, low: 1, high: 10_000_000, width: 6 };
  const days = { stored: 'd', whole: true, low: 1, high: 3_650, width: 6 };
  return [
    wordsField<CultureKind>('label', { title: 'Kind', width: 14, needed: true }),
    breedingField,
    figureField<CultureKind>(
      'ratePerDay',
      { name: 'Growth', stored: 'each/d', shown: '%/d', low: 0, high: 1 / 1.5, mayBeEmpty: true, width: 5 },
      display,
    ),
    figureField<CultureKind>(
      'tubL',
      { name: 'Tub', stored: 'L', shown: shownUnit('L', display), low: 0.05, high: 200, width: 4.5 },
      display,
    ),
    figureField<CultureKind>('capacity', { name: 'Capacity', ...count }, display),
    figureField<CultureKind>(
      'harvestShare',
      { name: 'Harvest', stored: 'share', shown: '%', low: 0, high: 1, width: 5 },
      display,
    ),
    figureField<CultureKind>('harvestEveryDays', { name: 'Harvest every', ...days }, display),
    figureField<CultureKind>('yield', { name: 'Yield', title: 'Yield of a harvest', ...count }, display),
    figureField<CultureKind>(
      'firstHarvestDays',
      { name: 'First harvest', title: 'First harvest after', ...days },
      display,
    ),
    figureField<CultureKind>(
      'productiveDays',
      { name: 'Productive', title: 'Productive for', ...days, mayBeEmpty: true } satisfies FigureParts,
      display,
    ),
    figureField<CultureKind>('lowestC', { name: 'Lowest', ...warmth }, display),
    figureField<CultureKind>('highestC', { name: 'Highest', ...warmth }, display),
    figureField<CultureKind>('founders', { name: 'Starter', title: 'Starter animals', ...count }, display),
    figureField<CultureKind>(
      'foundersNewLine',
      { name: 'New line', title: 'Starter of a new line', ...count },
      display,
    ),
    wordsField<CultureKind>('note', { title: 'Note', width: 18 }),
  ];
}

const breedingField: Field<CultureKind> = choiceField<CultureKind>({
  key: 'breeding',
  title: 'Breeding',
  options: plainOptions(breedings),
  width: 7,
  get: ({ breeding }) => breeding,
  put: (kind, word) => ({ ...kind, breeding: breedings.find((each) => each === word) ?? kind.breeding }),
});

function cultureMisfit({ lowestC, highestC, yield: animals, capacity }: CultureKind): string | undefined {
  if (lowestC > highestC) return `From ${lowestC} to ${highestC} °C runs backward.`;
  return animals > capacity ? `A harvest of ${animals} is more than the ${capacity} a tub holds.` : undefined;
}
