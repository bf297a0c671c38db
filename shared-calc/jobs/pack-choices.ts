import type { PackChoices } from '#shared-calc/buy/chosen-packs.ts';
import { sellerOf } from '#shared-calc/buy/pack-prices.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { PackChoice, Records } from '#shared-calc/records/records.ts';
import { freeId } from './find-job.ts';
import { putRecords } from './put-records.ts';

/** Packs of a material for the run over some jobs. */
export interface ChosenPacks {
  readonly jobs: readonly string[];
  readonly material: string;
  /** How many of each pack; `undefined`: the best packs. */
  readonly counts: ReadonlyMap<string, number> | undefined;
  /** Whose offer is taken; `undefined`: the one that lands for the least, or that the packs are of. */
  readonly supplier?: string | undefined;
}

/** The packs chosen by hand for the run over exactly these jobs, in any order. */
export function packChoices({ packChoice }: Pick<Records, 'packChoice'>, jobs: readonly string[]): PackChoices {
  return new Map(
    [...packChoice.values()]
      .filter((choice) => sameJobs(choice.jobs, jobs) && choice.packs.length > 0)
      .map(({ material, packs }) => [material, new Map(packs.map(({ pack, count }) => [pack, count]))]),
  );
}

/** The suppliers taken by hand for the run over exactly these jobs, by material; packs taken by hand say theirs. */
export function suppliersByHand(
  records: Pick<Records, 'packChoice' | 'pack' | 'material' | 'tank'>,
  jobs: readonly string[],
): ReadonlyMap<string, string> {
  const taken = new Map<string, string>();
  for (const { jobs: of, material, packs, supplier } of records.packChoice.values()) {
    if (!sameJobs(of, jobs)) continue;
    const pack = records.pack.get(packs.find(({ count }) => count > 0)?.pack ?? '');
    const seller = supplier ?? (pack && sellerOf(records, pack));
    if (seller !== undefined) taken.set(material, seller);
  }
  return taken;
}

/** Stores a choice of packs for the run over these jobs, or clears it; it also applies when they are ordered. */
export function choosePacks(records: Records, { jobs, material, counts, supplier }: ChosenPacks): Change {
  const known = [...records.packChoice.values()].find(
    (choice) => choice.material === material && sameJobs(choice.jobs, jobs),
  );
  const next: PackChoice[] = [];
  const isChoice = counts !== undefined || supplier !== undefined;
  if (isChoice) {
    const packs = [...(counts ?? [])].map(([pack, count]) => ({ pack, count }));
    const id = known?.id ?? freeId(`PC-${material}`, records.packChoice);
    next.push({ id, jobs: jobs.toSorted(), material, packs, ...(supplier !== undefined && { supplier }) });
  }
  const gone = isChoice || !known ? [] : [known.id];
  const label = labelOf(material, { counts, supplier, jobs });
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

function labelOf(material: string, { counts, supplier, jobs }: Omit<ChosenPacks, 'material'>): string {
  if (counts) return `packs of ${material} chosen for ${jobs.join(', ')}`;
  if (supplier !== undefined) return `${material} from ${supplier} for ${jobs.join(', ')}`;
  return `packs of ${material} back to the best`;
}

function sameJobs(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((job) => other.includes(job));
}
