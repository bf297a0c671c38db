import { chanceOfBreeding } from './both-sexes-chance.ts';
import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

const MOST_FOUNDERS = 1_000_000;

/** The smallest whole group that can breed with this chance. Refuses a chance of 1, males alone and no survivors. */
export const foundersNeeded = tradeFunction({
  name: 'founders_needed',
  title: 'Founders needed',
  group: 'cultures',
  args: [
    { name: 'chance', takes: 'share', low: 0.8, high: 0.999, says: 'how sure to be of both sexes' },
    { name: 'male_share', takes: 'share', low: 0, high: 0.7, says: 'males among them; 0 for a kind of females only' },
    { name: 'survive_share', takes: 'share', low: 0.5, high: 1, says: 'how many of them live to breed' },
  ],
  gives: 'each',
  sum: 'the least whole number of founders whose chance of both sexes reaches the chance wanted',
  help: 'How many animals to start a new line with.',
  examples: [
    { rule: 'founders_needed(99 %, 50 %, 100 %)', gives: '8 each' },
    { rule: 'founders_needed(99 %, 50 %, 80 %)', gives: '11 each' },
    { rule: 'founders_needed(99 %, 30 %, 90 %)', gives: '15 each' },
  ],
  source: 'chance of independent draws',
  compute: ({ chance, male_share, survive_share }) =>
    belowZero({ Chance: chance }) ??
    firstRefusal([[chance >= 1, 'No number of founders makes it certain; keep the chance below 100 %, as 99 %.']]) ??
    outsideShare({ 'Male share': male_share, 'Share that survives': survive_share }) ??
    firstRefusal([
      [male_share === 1, 'Males alone never breed.'],
      [survive_share === 0, 'No group breeds where none survives.'],
    ]) ??
    leastGroup((founders) => chanceOfBreeding(founders, male_share, survive_share) >= chance - 1e-12),
});

/** Bisects between too few and enough: the chance only rises with the group. */
function leastGroup(isEnough: (founders: number) => boolean): Answer {
  if (isEnough(0)) return 0;
  if (!isEnough(MOST_FOUNDERS)) return { refused: 'More than a million founders would be needed.' };
  let tooFew = 0;
  let enough = MOST_FOUNDERS;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}
