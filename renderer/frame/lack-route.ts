import type { Missing } from '#shared-calc/buy/missing.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { writeRoute } from './place-route.ts';

/** The link to where a missing figure is given. */
export function lackRoute(
  { what, of, at }: Missing,
  { tank, plant, line: lines }: Pick<Records, 'tank' | 'plant' | 'line'>,
  job?: string,
): string {
  switch (what) {
    case 'price':
      return writeRoute(tank.has(of) ? 'tank-book' : plant.has(of) ? 'plant-book' : 'material-book', of);
    case 'measure':
      return [...lines.values()].some(({ name, role }) => name === at?.line && role === 'tank')
        ? writeRoute('tank-book', of)
        : writeRoute('bench', ...(job === undefined ? [] : [job]));
    case 'rate':
    case 'tax':
      return writeRoute('rate-book');
  }
}
