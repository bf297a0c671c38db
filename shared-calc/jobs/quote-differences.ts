import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { textsOf, sizeWords, type JobSheet } from './job-sheet.ts';
import { frozenHouses, type QuoteBody } from './quote-body.ts';
import { partsOf } from './rework-quote.ts';

type Own = Pick<JobSheet, 'whole' | 'columns' | 'oneOffs'>;

/** One thing in which a job is not what a quote says. */
export interface QuoteDifference {
  readonly is: 'box' | 'size' | 'line';
  /** `T05.litter_depth`, `T05`, or the name of a one-off line. */
  readonly box: string;
  /** As the book stores it; a box that follows the house has the house's text, and what is not there is left out. */
  readonly from?: string;
  readonly to?: string;
}

/**
 * What is written for a job itself and differs from an issued quote: sizes, cells, what survey and animals give, and
 * one-off lines.
 */
export function quoteDifferences(sheet: Own, body: QuoteBody): readonly QuoteDifference[] {
  const [now, then] = [ownOf(sheet), ownOf(partsOf(body))];
  const house = new Map(
    frozenHouses(body)
      .toReversed()
      .flatMap(({ lines }) => lines.map(({ name, text }) => [name, text])),
  );
  return [...new Map([...then, ...now])].flatMap(([key, { is, box, line }]) => {
    const [from, to] = [then.get(key)?.text, now.get(key)?.text];
    if (from === to) return [];
    const usual = line === undefined ? undefined : house.get(line);
    return [{ is, box, ...textOr('from', from ?? usual), ...textOr('to', to ?? usual) }];
  });
}

function textOr<K extends 'from' | 'to'>(key: K, text: string | undefined): { readonly [P in K]?: string } {
  return (text === undefined ? {} : { [key]: text }) as { readonly [P in K]?: string };
}

interface OwnThing extends Pick<QuoteDifference, 'is' | 'box'> {
  readonly text: string;
  readonly line?: string;
}

function ownOf({ whole, columns, oneOffs }: Own): ReadonlyMap<string, OwnThing> {
  const things = new Map<string, OwnThing>();
  for (const [line, text] of textsOf(whole)) things.set(`whole ${line}`, { is: 'box', box: line, text, line });
  for (const column of columns) {
    const { size, key, tank, count, recipe, locals, given } = column;
    things.set(`size ${size}`, {
      is: 'size',
      box: calledOf(column),
      text: sizeWords({ tank: tank.id, count, ...(recipe !== undefined && { recipe }) }),
    });
    for (const [line, text] of textsOf(locals))
      things.set(`${size} ${line}`, { is: 'box', box: `${key}.${line}`, text, line });
    for (const [line, { text }] of given ?? [])
      things.set(`given ${size} ${line}`, { is: 'box', box: `${key}.${line}`, text, line });
  }
  for (const { id, label, group, costCoins } of oneOffs)
    things.set(`line ${id}`, { is: 'line', box: label, text: `${label} ${group} ${costCoins}` });
  return things;
}

/** `2 boxes`, `1 size, 2 boxes`. */
export function countDifferences(differences: readonly Pick<QuoteDifference, 'is'>[], changes = 0): string {
  const count = (is: QuoteDifference['is']) => differences.filter((each) => each.is === is).length;
  return [
    counted(count('size'), 'size', 'sizes'),
    counted(count('box'), 'box', 'boxes'),
    counted(count('line'), 'one-off line', 'one-off lines'),
    counted(changes, 'house change', 'house changes'),
  ]
    .filter((words) => words !== '')
    .join(', ');
}

function counted(count: number, one: string, many: string): string {
  if (count === 0) return '';
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}

/** A line of a house under its own name, for a change that a job took. */
export function changeDifference(before: Line | undefined, after: Line | undefined): QuoteDifference {
  const box = (after ?? before)?.name ?? '';
  return { is: 'box', box, ...textOr('from', before?.text), ...textOr('to', after?.text) };
}
