import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Chance that the surviving founders include both males and females. A male share of 0 means a kind of females only:
 * then the chance that any survives.
 */
export function chanceOfBreeding(founders: number, maleShare: number, surviveShare: number): number {
  const noneLives = (1 - surviveShare) ** founders;
  if (maleShare === 0) return 1 - noneLives;
  const noMale = (1 - surviveShare * maleShare) ** founders;
  const noFemale = (1 - surviveShare * (1 - maleShare)) ** founders;
  return Math.max(0, 1 - noMale - noFemale + noneLives);
}

/** Chance, as a share, that a group of founders can breed. Refuses shares outside 0 to 1. */
export const bothSexesChance = tradeFunction({
  name: 'both_sexes_chance',
  title: 'Chance of both sexes',
  group: 'cultures',
  args: [
    { name: 'founders', takes: 'each', low: 1, high: 100, says: 'animals a group starts from' },
    { name: 'male_share', takes: 'share', low: 0, high: 0.7, says: 'males among them; 0 for a kind of females only' },
    { name: 'survive_share', takes: 'share', low: 0.5, high: 1, says: 'how many of them live to breed' },
  ],
  gives: 'share',
  sum: '1 - (1 - survive x male) ^ founders - (1 - survive x female) ^ founders + (1 - survive) ^ founders',
  help: 'How likely a new group has both sexes. Of a kind with females only, how likely any lives.',
  examples: [
    { rule: 'both_sexes_chance(8, 50 %, 100 %)', gives: '99.22 %' },
    { rule: 'both_sexes_chance(8, 50 %, 80 %)', gives: '96.64 %' },
  ],
  source: 'chance of independent draws',
  compute: ({ founders, male_share, survive_share }) =>
    belowZero({ Founders: founders }) ??
    outsideShare({ 'Male share': male_share, 'Share that survives': survive_share }) ??
    chanceOfBreeding(founders, male_share, survive_share),
});
