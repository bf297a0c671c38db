import { allLines } from '#shared-calc/recipe/lines-of.ts';
import { usualSupplier } from '#shared-calc/buy/pack-prices.ts';
import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import type { RecordKind, Records, Size } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Names of the records that refer to this one. */
type UsersOf = (id: string, records: Records) => readonly string[];

const users: Readonly<Partial<Record<RecordKind, UsersOf>>> = {
  supplier: (id, records) => [
    ...named(
      records.tank,
      (tank) => tank.supplier === id,
      ({ id: code }) => `tank ${code}`,
    ),
    ...named(
      records.material,
      (material) => material.supplier === id,
      ({ id: code }) => `material ${code}`,
    ),
    ...named(
      records.pack,
      (pack) => pack.supplier === id && usualSupplier(records, pack.material) !== id,
      ({ material }) => `packs of ${material}`,
    ),
    ...named(
      records.quoteLine,
      (line) => line.supplier === id,
      ({ label }) => label,
    ),
  ],
  tank: (id, records) => [
    ...jobsWith(({ tank }) => tank === id, records),
    ...named(
      records.move,
      ({ of }) => of === id,
      () => 'the store',
    ),
  ],
  material: (id, records) => [
    ...named(
      allLines(records),
      (line) => line.material === id,
      ({ name, recipe }) => `${name} of ${recipe}`,
    ),
    ...named(
      records.move,
      ({ of }) => of === id,
      () => 'the store',
    ),
    ...named(
      records.treatmentBatch,
      (batch) => batch.material === id,
      ({ on }) => `the treatment of ${on}`,
    ),
  ],
  cultureKind: (id, records) => [
    ...named(
      records.tub,
      (tub) => tub.kind === id,
      ({ id: tub }) => `tub ${tub}`,
    ),
    ...named(
      records.animalKind,
      (kind) => kind.prey === id,
      ({ label }) => `the food of ${label}`,
    ),
  ],
  animalKind: (id, records) => [
    ...jobsWith(({ animalKind }) => animalKind === id, records),
    ...named(
      records.animalBatch,
      (batch) => batch.kind === id,
      ({ id: batch }) => `batch ${batch}`,
    ),
  ],
  taxClass: (id, records) =>
    named(
      records.margin,
      (margin) => margin.taxClass === id,
      ({ label }) => label,
    ),
  margin: (id, records) => [
    ...named(
      allLines(records),
      (line) => line.group === id,
      ({ name, recipe }) => `${name} of ${recipe}`,
    ),
    ...named(
      records.quoteLine,
      (line) => line.group === id,
      ({ label }) => label,
    ),
    ...(id === WORK_GROUP ? ['the price of all work'] : []),
  ],
  rate: (id, records) => [
    ...(pricedBy.has(id) ? ['the price of every hour'] : []),
    ...named(
      allLines(records),
      (line) => line.who === id,
      ({ name, recipe }) => `${name} of ${recipe}`,
    ),
  ],
};

/** Rates that the sums of a quote use by name. */
const pricedBy = new Set(['R-builder', 'R-overhead']);

const tellAtMost = 4;

/** Whether these records can be removed; if not, names what still needs the first of them, with the cure. */
export function mayGo(kind: RecordKind, ids: readonly string[], records: Records): Result<undefined, string> {
  for (const id of ids) {
    const by = [...new Set(users[kind]?.(id, records) ?? [])];
    if (by.length === 0) continue;
    const more = by.length - tellAtMost;
    const names = by.slice(0, tellAtMost).join(', ') + (more > 0 ? ` and ${more} more` : '');
    return failed(`${id} stays: it is used by ${names}. Take it out there first.`);
  }
  return ok(undefined);
}

function jobsWith(has: (size: Size) => boolean, records: Records): readonly string[] {
  const jobs = [...records.size.values()].filter(has).map(({ job }) => job);
  return jobs.map((job) => `${job} ${records.job.get(job)?.title ?? ''}`.trim());
}

function named<R>(
  list: ReadonlyMap<string, R> | readonly R[],
  uses: (record: R) => boolean,
  say: (record: R) => string,
): readonly string[] {
  return [...list.values()].filter(uses).map(say);
}
