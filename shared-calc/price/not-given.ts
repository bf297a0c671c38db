import { recordFields } from '#shared-calc/fields/record-fields.ts';
import type { Margin, Rate, TaxClass, Workshop } from '#shared-calc/records/records.ts';

/** A figure of the house that nobody has given yet: facts, one for each. */
export interface NotGiven {
  readonly what: 'rate' | 'tax';
  /** Where it is given. */
  readonly kind: 'rate' | 'margin' | 'taxClass' | 'workshop';
  /** The id of its record; of the workshop, the key of its field. */
  readonly of: string;
  readonly label: string;
}

export type WorkshopKey = keyof Workshop;

export function rateNotGiven({ id, label }: Pick<Rate, 'id' | 'label'>): NotGiven {
  return { what: 'rate', kind: 'rate', of: id, label };
}

export function marginNotGiven({ id, label }: Margin): NotGiven {
  return { what: 'rate', kind: 'margin', of: id, label: `Margin of ${label}` };
}

export function taxNotGiven({ id, label }: TaxClass): NotGiven {
  return { what: 'tax', kind: 'taxClass', of: id, label: `Tax: ${label}` };
}

export function houseNotGiven(key: WorkshopKey): NotGiven {
  return { what: 'rate', kind: 'workshop', of: key, label: recordFields.workshop[key].heading };
}
