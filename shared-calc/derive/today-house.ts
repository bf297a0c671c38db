import { sayDay } from '#shared-calc/prepare/say-day.ts';
import type { Derived, DerivedJob } from './derived.ts';
import { houseOffers } from './house-offers.ts';
import { builder, ofJob, type TodayDraft } from './today-item.ts';

/** Changes of the house that wait for the answer of a sold job. */
export function houseItems({ job }: DerivedJob, derived: Derived): readonly TodayDraft[] {
  return houseOffers(derived, job.id).map(({ change }) => {
    const { id, note, inForceOn = derived.today, before, after } = change;
    const line = after?.label ?? before?.label ?? '';
    return {
      ...ofJob(job, id),
      day: inForceOn,
      what: `take or leave ${id}`,
      who: builder,
      why: `${line} of the house changed on ${sayDay(inForceOn, derived.display)}${note === '' ? '' : `: ${note}`}`,
      tick: { is: 'go' },
    };
  });
}
