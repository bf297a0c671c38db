import type { Derived, DerivedJob } from './derived.ts';
import { isHandedOver } from './planned-jobs.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import { fitter, ofJob, type TodayDraft } from './today-item.ts';

/** The step with which a call or a visit was made. */
const CARED = 'care';

/** The next call or visit of a job that is handed over: the first that no care since covers. */
export function careItems(
  { job, plan }: DerivedJob,
  { records: { done }, display }: Pick<Derived, 'records' | 'display'>,
): readonly TodayDraft[] {
  if (!isHandedOver(job)) return [];
  const dates = plan();
  if (!dates.ok) return [];
  const { care, handover } = dates.value.plan;
  const made = [...done.values()].filter((each) => each.job === job.id && each.step === CARED).map(({ on }) => on);
  const last = made.toSorted().at(-1) ?? handover;
  const next = care.find(({ date }) => date > last);
  if (!next) return [];
  return [
    {
      ...ofJob(job, `care ${next.date}`),
      day: next.date,
      what: next.act,
      who: fitter,
      why: `Handed over on ${sayDay(handover, display)}`,
      tick: { is: 'did', step: CARED, ends: true },
    },
  ];
}
