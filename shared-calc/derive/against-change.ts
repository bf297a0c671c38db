import type { Job } from '#shared-calc/records/records.ts';
import { applyChange, updated, type Added, type Change, type Updated } from '#shared-calc/records/change.ts';
import { againstMove, type Against } from './against-move.ts';
import type { Derived } from './derived.ts';

/** A job that a change moves to another state, and what stands against that. */
export interface AgainstJob {
  readonly job: string;
  readonly state: Job['state'];
  readonly against: readonly Against[];
}

/** What stands against each move of a job in a change, with what the change tells of the job. */
export function againstChange(derived: Derived, change: Change): readonly AgainstJob[] {
  const moved = change.updated.flatMap((each) =>
    each.kind === 'job' && each.from.state !== each.to.state ? [each.to] : [],
  );
  if (moved.length === 0) return [];
  const told = derived.update(applyChange(derived.records, toldIn(change)));
  return moved.map(({ id, state }) => ({ job: id, state, against: againstMove(told, id, state) }));
}

/** The same as one list; where several jobs move, each line names its job. */
export function allAgainst(jobs: readonly AgainstJob[]): readonly Against[] {
  if (jobs.length === 1) return jobs.flatMap(({ against }) => against);
  return jobs.flatMap(({ job, against }) => against.map(({ what, why }) => ({ what, why: `${job}: ${why}` })));
}

/** A deposit, answers and figures; not the move itself, nor what a build takes out of the Store. */
function toldIn(change: Change): Change {
  const isFigure = ({ kind }: Added | Updated) => kind === 'localValue';
  return {
    label: change.label,
    added: change.added.filter(isFigure),
    removed: change.removed.filter(isFigure),
    updated: change.updated.flatMap((each) => {
      if (each.kind !== 'job') return isFigure(each) ? [each] : [];
      return [updated('job', each.from, { ...each.to, state: each.from.state })];
    }),
  };
}
