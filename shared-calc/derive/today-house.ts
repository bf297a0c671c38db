import { lineOfChange } from '#shared-calc/jobs/house-changes.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { DerivedJob } from './derived.ts';
import { builder, ofJob, type TodayDraft } from './today-item.ts';

/** What its house offers a sold job is taken or left from the day on which it is in force. */
export function houseItems({ job, sold }: DerivedJob): readonly TodayDraft[] {
  return (sold?.offered ?? []).flatMap((change) => {
    const line = lineOfChange(change);
    if (!line || change.inForceOn === undefined) return [];
    return [
      {
        ...ofJob(job, `${change.id} offered`),
        day: change.inForceOn,
        what: `take or leave ${change.id}`,
        who: builder,
        why: `The house has changed since ${sold?.quote.id ?? ''}: ${lineLabel(line)}`,
        tick: { is: 'go' },
      },
    ];
  });
}
