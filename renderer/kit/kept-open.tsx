import { useEffect } from 'preact/hooks';
import type { MoneyHands } from '#renderer/store/money-hands.ts';

/** The job that a link names lies open from then on, on every place. */
export function KeptOpen({ hands, job }: { readonly hands: MoneyHands; readonly job: string }) {
  useEffect(() => hands.openJob(job), [job]);
  return null;
}
