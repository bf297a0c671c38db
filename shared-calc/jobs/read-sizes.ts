import type { Records, Size } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { JobFault } from './job-fault.ts';

/** Without a recipe it has that of its job. */
export type WantedSize = Pick<Size, 'tank' | 'count' | 'recipe'>;

export const MOST_BUILDS = 999;

/** Reads `T03,T07x2,T05:H3`: tanks, each with a recipe of its own or none, and a count of builds or none. */
export function readSizes(
  text: string,
  records: Pick<Records, 'tank' | 'recipe'>,
): Result<readonly WantedSize[], JobFault> {
  const sizes: WantedSize[] = [];
  for (const word of text.split(',').map((each) => each.trim())) {
    const size = readSize(word, records);
    if (!size.ok) return size;
    sizes.push(size.value);
  }
  return ok(sizes);
}

function readSize(word: string, records: Pick<Records, 'tank' | 'recipe'>): Result<WantedSize, JobFault> {
  const size = splitSize(word, records);
  return size.tank === '' ? failed({ kind: 'bad-size', size: word }) : checkSize(size, records);
}

/** `T05:H3x2` in its parts: tank, recipe, builds. A code that is in the book is never split. */
export function splitSize(word: string, { tank, recipe }: Pick<Records, 'tank' | 'recipe'>): WantedSize {
  const [, id = '', own] = /^(.+?):([^:]+)$/.exec(word) ?? [];
  if (own === undefined || tank.has(word)) {
    const { code, count } = splitCount(word, tank);
    return { tank: code, count };
  }
  const { code, count } = splitCount(own, recipe);
  return { tank: id, count, recipe: code };
}

function splitCount(word: string, book: { has(code: string): boolean }): { code: string; count: number } {
  const [, code = '', times = '1'] = book.has(word) ? ['', word] : (/^(.+?)(?:x(\d+))?$/.exec(word) ?? []);
  return { code, count: Number(times) };
}

/** Checks that a tank is in the tank book, its recipe in the house, and that its count can be built. */
export function checkSize(
  size: WantedSize,
  { tank, recipe }: Pick<Records, 'tank' | 'recipe'>,
): Result<WantedSize, JobFault> {
  if (!tank.has(size.tank)) {
    const near = nearestName(size.tank, tank.keys());
    return failed({ kind: 'no-tank', tank: size.tank, ...(near !== undefined && { near }) });
  }
  if (size.recipe !== undefined && !recipe.has(size.recipe))
    return failed({ kind: 'no-recipe', recipe: size.recipe, recipes: [...recipe.keys()] });
  const buildable = Number.isInteger(size.count) && size.count >= 1 && size.count <= MOST_BUILDS;
  return buildable ? ok(size) : failed({ kind: 'bad-count', size: size.tank, most: MOST_BUILDS });
}
