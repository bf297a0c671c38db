import type { BookContext, BookHands } from '#renderer/books/book-hands.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { choiceField, plainOptions } from '#renderer/books/choice-field.ts';
import type { Field } from '#renderer/books/field.ts';
import { figureField } from '#renderer/books/figure-field.ts';
import { moneyField } from '#renderer/books/money-field.ts';
import { recordTable } from '#renderer/books/record-table.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import { yesNoField } from '#renderer/books/yes-no-field.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { shownUnit } from '#shared-calc/quantity/shown-unit.ts';
import { plantClasses } from '#shared-calc/fields/plant.ts';
import type { Plant } from '#shared-calc/records/records.ts';

/** Plants by their class, with their light, their growth and what they cost. */
export function plantBookPlace(hands: BookHands): (route: Route) => PlaceView {
  return bookPlace({ hands, table: plantTable, aside: 'chosen for a job by class, light and who may touch them' });
}

export const plantTable = recordTable<'plant'>({
  kind: 'plant',
  label: 'Plant book, one plant a row',
  one: 'plant',
  letters: 'P',
  wordsOf: ({ name }) => name,
  blank: (id) => ({
    id,
    name: '',
    class: 'ground',
    widthNowCm: 6,
    widthLaterCm: 15,
    lightLow: 2,
    lightHigh: 6,
    priceCoins: 0,
    dry: false,
    harm: '',
    leastFloorM2: 0,
    note: '',
  }),
  fields: plantFields,
  misfit: plantMisfit,
});

function plantFields({ display, workshop }: BookContext): readonly Field<Plant>[] {
  const cm = display.unitsShown['length'] === undefined ? 'cm' : shownUnit('cm', display);
  const light = { stored: 'mol/m2/d', low: 0, high: 60, width: 6 };
  return [
    wordsField<Plant>('name', { title: 'Plant', width: 17, needed: true }),
    choiceField<Plant>({
      key: 'class',
      title: 'Class',
      options: plainOptions(plantClasses),
      width: 6,
      get: (plant) => plant.class,
      put: (plant, word) => ({ ...plant, class: plantClasses.find((each) => each === word) ?? plant.class }),
    }),
    figureField<Plant>(
      'widthNowCm',
      { name: 'Width now', stored: 'cm', shown: cm, low: 0.5, high: 300, width: 5 },
      display,
    ),
    figureField<Plant>(
      'widthLaterCm',
      { name: 'Width in a year', stored: 'cm', shown: cm, low: 0.5, high: 500, width: 6 },
      display,
    ),
    figureField<Plant>('lightLow', { name: 'Light from', ...light }, display),
    figureField<Plant>('lightHigh', { name: 'Light to', ...light }, display),
    moneyField<Plant>('priceCoins', { title: 'Price', width: 5 }, workshop),
    yesNoField<Plant>('dry', 'Dry tanks only', 5.5),
    wordsField<Plant>('harm', { title: 'Harm', width: 8 }),
    figureField<Plant>(
      'leastFloorM2',
      { name: 'Least floor', stored: 'm2', shown: shownUnit('m2', display), low: 0, high: 20, width: 5.5 },
      display,
    ),
    wordsField<Plant>('note', { title: 'Note', width: 18 }),
  ];
}

function plantMisfit({ lightLow, lightHigh }: Plant): string | undefined {
  return lightLow > lightHigh ? `Light from ${lightLow} to ${lightHigh} runs backward.` : undefined;
}
