import { textsOf, type JobSheet } from './job-sheet.ts';
import type { QuoteBody } from './quote-body.ts';
import { partsOf } from './rework-quote.ts';

type Own = Pick<JobSheet, 'whole' | 'columns' | 'oneOffs'>;

/** How many things written for a job itself differ from its issued quote: sizes, cells, what survey and animals give, and one-off lines. */
export function quoteDifferences(sheet: Own, body: QuoteBody): number {
  const [now, then] = [ownOf(sheet), ownOf(partsOf(body))];
  return [...new Set([...now.keys(), ...then.keys()])].filter((key) => now.get(key) !== then.get(key)).length;
}

function ownOf({ whole, columns, oneOffs }: Own): ReadonlyMap<string, string> {
  return new Map([
    ...[...textsOf(whole)].map(([line, text]) => [`whole ${line}`, text] as const),
    ...columns.map(({ size, tank, count }) => [`size ${size}`, `${tank.id} x${count}`] as const),
    ...columns.flatMap(({ size, locals }) =>
      [...textsOf(locals)].map(([line, text]) => [`${size} ${line}`, text] as const),
    ),
    ...columns.flatMap(({ size, given = new Map() }) =>
      [...given].map(([line, { text }]) => [`given ${size} ${line}`, text] as const),
    ),
    ...oneOffs.map(({ id, label, group, costCoins }) => [`line ${id}`, `${label} ${group} ${costCoins}`] as const),
  ]);
}
