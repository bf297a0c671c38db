import { coinsUpToStep } from './coin-rounding.ts';
import { notCoins } from './refuse-coins.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { listFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** Amounts in coins. */
export interface DepositTerms {
  readonly gross: number;
  readonly share: number;
  /** Rounds up to the next multiple of this; 0 means to the coin. */
  readonly step: number;
  /** Cost of goods cut or grown for the job: the least deposit. */
  readonly floorCost: number;
}

/**
 * Coins to pay before anything is ordered: a share of the gross or the floor, the greater of the two, up to the step.
 */
export function depositDue({ gross, share, step, floorCost }: DepositTerms): Answer {
  return (
    notCoins({ Gross: gross, 'The step': step, 'The floor': floorCost }) ??
    outsideShare({ 'The deposit': share }) ??
    coinsUpToStep(Math.max(share * gross, floorCost), step === 0 ? 1 : step)
  );
}

export const depositDueEntry = listFunction({
  name: 'DEPOSIT_DUE',
  title: 'Deposit due',
  group: 'price',
  takes: 'gross, share, step, cost of what is cut or grown for the job',
  gives: 'money',
  sum: 'the greater of share x gross and that cost, up to the step',
  help: 'Do not order cut glass before the money.',
  examples: [
    { rule: 'gross 1,615.56, 40 %, step 5.00, floor 180.00', gives: '650.00' },
    { rule: 'gross 400.00, 40 %, step 5.00, floor 181.00', gives: '185.00' },
  ],
  source: 'common practice, no source',
});
