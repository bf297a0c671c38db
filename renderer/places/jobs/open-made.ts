import { writeRoute } from '#renderer/frame/place-route.ts';
import type { MoneyHands } from '#renderer/store/money-hands.ts';
import { idsOf } from '#shared-calc/acts/act.ts';
import type { Change } from '#shared-calc/records/change.ts';

/** Opens the job that a change adds. */
export function openMade({ openJob }: Pick<MoneyHands, 'openJob'>, change: Change): void {
  const [job = ''] = idsOf(change);
  openJob(job);
  location.hash = writeRoute('jobs', job);
}
