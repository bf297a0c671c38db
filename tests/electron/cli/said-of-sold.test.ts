import { describe, expect, test } from 'vitest';
import { today } from '#electron/service/today.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { sayPlainDate } from '#shared-calc/prepare/say-day.ts';
import { type Said, useSaidWhole } from './said-whole.ts';

const day = today();

/** J02 is quoted, and its bench differs from the quote in one box; what stands against a move is read elsewhere. */
const sold: readonly Said[] = [
  [['job', 'sold', 'J02'], ['J02 is enquiry: nothing is frozen, it follows its house.']],
  [['job', 'state', 'J02', 'accepted'], ['! J02 differs from Q-0001A in 1 box: issue a revision, or say --as-issued.']],
  [
    ['job', 'state', 'J02', 'accepted', '--quote', 'Q-0009A'],
    ['! Q-0009A is no quote of J02. Did you mean Q-0001A? It has Q-0001A.'],
  ],
  [
    ['job', 'state', 'J02', 'accepted', '--as-issued'],
    [
      'job  title         state     sizes  handover  next',
      '---  ------------  --------  -----  --------  --------------------',
      'J02  Reading room  accepted  T05              waits for the client',
    ],
  ],
  [
    ['house', 'propose', 'H1', 'litter=20 mm', '--note', 'thinner lasts', '--from', 'J02'],
    [
      'HC-0001 proposed for H1: Litter depth 30 mm -> 20 mm',
      'job  state     will        effect',
      '---  --------  ----------  ---------------------------------------------------------',
      'J01  enquiry   follow      Small oak leaves, dry -176.95\u00a0g; cost -9.20, price -17.17',
      'J02  accepted  be offered  Small oak leaves, dry -35.83\u00a0g; cost -1.86, price -3.47',
    ],
  ],
  [['house', 'propose', 'H1', 'litter=30 mm'], ['! H1 has that already: nothing to propose.']],
  [
    ['house', 'propose', 'H1', 'capping_waste=12 %'],
    [
      'HC-0002 proposed for H1: Waste 3 % -> 12 %',
      'job  state     will        effect',
      '---  --------  ----------  ------------------------------------------------------',
      'J01  enquiry   follow      Calcined clay 2-6 mm +1.37\u00a0L; cost +1.64, price +3.07',
      'J02  accepted  be offered  Calcined clay 2-6 mm +0.287\u00a0L; cost +0.35, price +0.65',
    ],
  ],
  [['house', 'drop', 'HC-0002'], ['HC-0002 dropped: Waste 3 % -> 12 %']],
  [['house', 'drop', 'HC-0002'], ['! There is no house change HC-0002. Did you mean HC-0001?']],
  [
    ['house', 'force', 'HC-0001'],
    [
      `HC-0001 in force since ${day}: Litter depth 30 mm -> 20 mm`,
      'job  state     will        effect',
      '---  --------  ----------  ---------------------------------------------------------',
      'J01  enquiry   follow      Small oak leaves, dry -176.95\u00a0g; cost -9.20, price -17.17',
      'J02  accepted  be offered  Small oak leaves, dry -35.83\u00a0g; cost -1.86, price -3.47',
    ],
  ],
  [
    ['job', 'sold', 'J02'],
    [
      `J02 is sold as Q-0001A, accepted ${day}`,
      'is offered HC-0001: Litter depth 30 mm -> 20 mm; Small oak leaves, dry -35.83\u00a0g; cost -1.86, price -3.47',
      'as in Q-0001A',
    ],
  ],
  [
    ['house', 'answer', 'HC-0001', 'J02', 'take'],
    [
      'job  title         state     sizes  handover  next',
      '---  ------------  --------  -----  --------  --------------------',
      'J02  Reading room  accepted  T05              waits for the client',
      'J02 takes HC-0001: Small oak leaves, dry -35.83\u00a0g; cost -1.86, price -3.47',
    ],
  ],
  [
    ['house', 'answer', 'HC-0001', 'J02', 'leave'],
    [`! J02 took HC-0001 on ${sayPlainDate(day, {})}; it is answered once.`],
  ],
  [
    ['house', 'changes', 'H1'],
    [
      'change   recipe  on          in force    what                         note           answers',
      '-------  ------  ----------  ----------  ---------------------------  -------------  -----------------------------',
      `HC-0001  H1      ${day}  ${day}  Litter depth 30 mm -> 20 mm  thinner lasts  J02 take ${day} R-builder`,
    ],
  ],
  [
    ['job', 'sold', 'J02'],
    [
      `J02 is sold as Q-0001A, accepted ${day}`,
      'took HC-0001: Litter depth 30 mm -> 20 mm',
      'not in Q-0001A: 1 house change, -3.47',
      '  litter 30 mm -> 20 mm',
    ],
  ],
];

describe('what is printed of sold jobs', () => {
  const { said, saidInTurn } = useSaidWhole(addDays(day, -3));

  test('a quote accepted as issued; a change of the house proposed, put in force, offered and taken', async () => {
    await said('job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--set', 'soil_rise=0 mm');
    const [first, ...rest] = sold;
    expect(await saidInTurn(first ? [first] : [])).toEqual([first]);
    await said('quote', '--job', 'J02', '--issue');
    await said('job', 'set', 'J02', 'litter=40 mm');
    const all = await saidInTurn(rest);
    expect(all.map(([argv, says]) => [argv, says.filter((line) => !line.startsWith('! Against it'))])).toEqual(rest);
  });

  test('the draft of its revision is at sold prices, unless those of today are asked for', async () => {
    const priced = async (...more: readonly string[]) => {
      const says = await said('quote', '--job', 'J02', '--csv', ...more);
      return says.filter((line) => line.startsWith('Price')).map((line) => line.trimEnd());
    };
    await said('act', 'put', JSON.stringify({ kind: 'packPrice', record: dear }));
    expect([await priced(), await priced('--prices', 'today')]).toEqual([['Price,1597.94,'], ['Price,1609.14,']]);
    expect(await said('quote', '--job', 'J02', '--prices', 'yesterday')).toEqual([
      '! --prices yesterday: say today, or leave it out.',
    ]);
  });
});

/** The tank at 155.00 for 148.00. */
const dear = { id: 'T05-1@dear', pack: 'T05-1', from: day, priceCoins: 15_500 };
