import { byId } from '#shared-calc/records/by-id.ts';
import type { QuoteBody } from './quote-body.ts';

/** The rates, margins and tax classes of a frozen quote. */
export function ratesOf({ margins, taxClasses, rates }: Pick<QuoteBody, 'margins' | 'taxClasses' | 'rates'>) {
  return { margin: byId(margins), taxClass: byId(taxClasses), rate: byId(rates) };
}
