import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { QuoteSums } from './quote-sums.ts';

/** "Builder 10 h, Fitter 1.5 h"; empty where all hours are the builder's. */
export function sayPeople(
  { people = [] }: Pick<QuoteSums, 'people'>,
  written: { readonly decimalComma?: boolean } = {},
): string {
  return people.map(({ label, hours }) => `${label} ${writeNumber(hours, 2, written)} h`).join(', ');
}
