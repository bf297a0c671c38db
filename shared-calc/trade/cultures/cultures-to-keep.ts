import { listFunction } from '#shared-calc/trade/trade-function.ts';

export const culturesToKeepEntry = listFunction({
  name: 'CULTURES_TO_KEEP',
  title: 'Cultures to keep',
  group: 'cultures',
  takes:
    'dated demands, tubs that stand, the growth of the kind and its starter animals, days to the first harvest and between harvests, the share taken',
  gives: 'tubs to start and when at the latest, spare tubs, what is short',
  sum: 'each demand from the tubs in order of their start, each grown by its own curve; new ones where it is short, as late as all demands allow; spare = a fifth of the tubs, up to the whole, at least 1',
  help: 'How many tubs the builds of a season ask for, and by when. A floated tub gives its share once in a refill time and what is over is not kept; from a picked one what is asked for is taken, up to its share in a refill time.',
  examples: [
    {
      rule: '28 Jun 2027 2,130; 5 Jul 1,581; 19 Jul 1,914; 1,250 growing 7 % a day to 16,000; half of it floated every 14 d from day 28 on',
      gives: '2 tubs and 1 spare, started by 31 May and 7 June 2027',
    },
    {
      rule: '28 Jun 2027 7,000; the same tubs',
      gives: '3 tubs and 1 spare, started by 31 May 2027',
    },
  ],
  source: 'logistic growth; rates from memory',
  cautions: ['microfauna', 'neverRelease'],
});
