import type { PackChoices } from '#shared-calc/buy/chosen-packs.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { PackChoice, Records } from '#shared-calc/records/records.ts';
import { freeId } from './find-job.ts';
import { putRecords } from './put-records.ts';

/** Packs of a material for the run over some jobs. */
export interface ChosenPacks {
  readonly jobs: readonly string[];
  readonly material: string;
  /** How many of each pack; `undefined`: the best packs again. */
  readonly counts: ReadonlyMap<string, number> | undefined;
}

/** The packs chosen by hand for the run over exactly these jobs, in any order. */
export function packChoices({ packChoice }: Pick<Records, 'packChoice'>, jobs: readonly string[]): PackChoices {
  return new Map(
    [...packChoice.values()]
      .filter((choice) => sameJobs(choice.jobs, jobs))
      .map(({ material, packs }) => [material, new Map(packs.map(({ pack, count }) => [pack, count]))]),
  );
}

/** Stores a choice of packs for the run over these jobs, or clears it; it also applies when they are ordered. */
export function choosePacks(records: Records, { jobs, material, counts }: ChosenPacks): Change {
  const known = [...records.packChoice.values()].find(
    (choice) => choice.material === material && sameJobs(choice.jobs, jobs),
  );
  const next: PackChoice[] = [];
  if (counts) {
    const packs = [...counts].map(([pack, count]) => ({ pack, count }));
    const id = known?.id ?? freeId(`PC-${material}`, records.packChoice);
    next.push({ id, jobs: jobs.toSorted(), material, packs });
  }
  const gone = counts || !known ? [] : [known.id];
  const label = counts ? `packs of ${material} chosen for ${jobs.join(', ')}` : `packs of ${material} back to the best`;
  return diffRecords(label.slice(0, LABEL_LENGTH), records, {
    ...records,
    packChoice: putRecords(records.packChoice, next, gone),
  });
}

/**
 * Clears the choices of these jobs for materials that were received: what is still missing is bought with the best
 * packs.
 */
export function spendChoices(records: Records, jobs: readonly string[], materials: readonly string[]): Change {
  const spent = [...records.packChoice.values()].filter(
    (choice) => materials.includes(choice.material) && sameJobs(choice.jobs, jobs),
  );
  const gone = spent.map(({ id }) => id);
  return diffRecords('chosen packs in', records, {
    ...records,
    packChoice: putRecords(records.packChoice, [], gone),
  });
}

const LABEL_LENGTH = 300;

function sameJobs(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((job) => other.includes(job));
}
