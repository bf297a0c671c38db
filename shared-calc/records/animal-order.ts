import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { displayOf } from './display-of.ts';
import { showField } from './field-text.ts';
import type { AnimalKind, Records } from './records.ts';
import { workshopOf } from './workshop-of.ts';

interface Bound {
  readonly called: string;
  /** As shown, with its unit. */
  readonly is: string;
}

/** Two figures of a kind of animal of which the lower must not lie above the higher. */
export interface Disorder {
  readonly kind: 'not-in-order';
  readonly low: Bound;
  readonly high: Bound;
  readonly mayEqual: boolean;
}

type FigureKey = 'ceiling' | 'actFrom' | 'floor' | 'bandLow' | 'bandHigh' | 'groupLeast' | 'groupMost';

const orders: readonly (readonly [low: FigureKey, high: FigureKey, mayEqual: boolean])[] = [
  ['floor', 'actFrom', false],
  ['actFrom', 'ceiling', true],
  ['floor', 'ceiling', false],
  ['bandLow', 'bandHigh', false],
  ['groupLeast', 'groupMost', true],
];

/** The first two figures that are not in order; figures left out are in no order. */
export function disorderOf(kind: AnimalKind, records: Records): Disorder | undefined {
  for (const [lower, higher, mayEqual] of orders) {
    const [low, high] = [kind[lower], kind[higher]];
    if (low === undefined || high === undefined || low < high || (mayEqual && low === high)) continue;
    return { kind: 'not-in-order', low: boundOf(lower, low, records), high: boundOf(higher, high, records), mayEqual };
  }
  return undefined;
}

function boundOf(key: FigureKey, value: number, records: Records): Bound {
  const field = recordFields.animalKind[key];
  const workshop = workshopOf(records);
  const context = { records, workshop, display: displayOf(workshop) };
  const unit =
    field.unit === 'each' ? '' : shownUnitWords(field.unit === 'share' ? '%' : (field.unit ?? ''), context.display);
  return { called: field.called ?? field.heading, is: `${showField(field, value, context)} ${unit}`.trim() };
}
