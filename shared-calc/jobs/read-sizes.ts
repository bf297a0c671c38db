import type { Records, Size } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { JobFault } from './job-fault.ts';

export type WantedSize = Pick<Size, 'tank' | 'count'>;

export const MOST_BUILDS = 999;

/** Reads `T03,T07x2`: tanks, each with an optional count of builds. */
export function readSizes(text: string, records: Pick<Records, 'tank'>): Result<readonly WantedSize[], JobFault> {
  const sizes: WantedSize[] = [];
  for (const word of text.split(',').map((each) => each.trim())) {
    const size = readSize(word, records);
    if (!size.ok) return size;
    sizes.push(size.value);
  }
  return ok(sizes);
}

function readSize(word: string, { tank }: Pick<Records, 'tank'>): Result<WantedSize, JobFault> {
  if (tank.has(word)) return ok({ tank: word, count: 1 });
  const [, id = '', times = '1'] = /^(.+?)(?:x(\d+))?$/.exec(word) ?? [];
  if (id === '') return failed({ kind: 'bad-size', size: word });
  return checkSize({ tank: id, count: Number(times) }, { tank });
}

/** Checks that a tank is in the tank book and that its count can be built. */
export function checkSize(size: WantedSize, { tank }: Pick<Records, 'tank'>): Result<WantedSize, JobFault> {
  if (!tank.has(size.tank)) {
    const near = nearestName(size.tank, tank.keys());
    return failed({ kind: 'no-tank', tank: size.tank, ...(near !== undefined && { near }) });
  }
  const buildable = Number.isInteger(size.count) && size.count >= 1 && size.count <= MOST_BUILDS;
  return buildable ? ok(size) : failed({ kind: 'bad-count', size: size.tank, most: MOST_BUILDS });
}
