import type { MoneyHands } from './money-hands.ts';

/** What the places of preparing need of the store. */
export type PrepareHands = Pick<
  MoneyHands,
  'records' | 'derived' | 'info' | 'doAct' | 'say' | 'refuse' | 'job' | 'openJob'
>;
