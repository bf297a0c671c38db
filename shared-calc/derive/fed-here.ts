import { jobName } from '#shared-calc/jobs/find-job.ts';
import { eatenBy, eatenTogether, preyEaten, type PreyEaten } from '#shared-calc/prepare/prey-eaten.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';
import { isUnderWay } from './planned-jobs.ts';

/** Who eats how much of a kind of prey in a week. */
export interface FedHere extends PreyEaten {
  readonly eaters: readonly { readonly called: string; readonly aWeek: number }[];
}

/**
 * What the batches of animals eat that stand here, and those that paid jobs are built for until they are handed over;
 * animals of a batch that are planned into a size are counted once, with their batch.
 */
export function fedHere(derived: Derived, { id: prey }: CultureKind): FedHere {
  const { records } = derived;
  const batches = [...records.animalBatch.values()].flatMap(({ id, kind: of, count }) => {
    const kind = records.animalKind.get(of);
    return kind?.prey === prey ? [{ called: `batch ${id}`, ...eatenBy(count, kind, `batch ${id}`) }] : [];
  });
  const jobs = [...records.job.values()].filter(isUnderWay).flatMap((job) => {
    const columns = derived.job(job.id)?.bench.input().columns ?? [];
    const own = [...records.placement.values()].filter(({ size }) => records.size.get(size)?.job === job.id);
    const eaten = eatenTogether([
      preyEaten(columns, prey),
      ...own.flatMap(({ batch, count }) => {
        const kind = records.animalKind.get(records.animalBatch.get(batch)?.kind ?? '');
        return kind?.prey === prey ? [{ aWeek: -eatenBy(count, kind, '').aWeek, unknown: [] }] : [];
      }),
    ]);
    const called = jobName(job);
    return [{ called, aWeek: Math.max(0, eaten.aWeek), unknown: eaten.unknown.map((size) => `${size} of ${called}`) }];
  });
  const eaters = [...batches, ...jobs];
  return { ...eatenTogether(eaters), eaters: eaters.filter(({ aWeek }) => aWeek > 0) };
}
