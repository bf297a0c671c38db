import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const turns: readonly Said[] = [
  [
    ['prices', 'rise', 'S-hollin', '12%', '--materials', 'M01,M04', '--try'],
    [
      'Tried only: nothing is written.',
      '',
      'pack    before, cr  price',
      '------  ----------  -----',
      'M01-10        9.80  10.98',
      'M01-45       31.50  35.28',
      'M04-6         7.20   8.06',
      'M04-38       29.00  32.48',
      '',
      'job  quote    state   cost then  cost now  margin then  margin now  below our margin by',
      '---  -------  ------  ---------  --------  -----------  ----------  -------------------',
      'J02  Q-0001A  quoted    1320.63   1323.31       619.73      617.05                 4.47',
    ],
  ],
  [['prices', 'touched'], ['No open quote is touched.']],
  [['prices', 'rise', 'S-hollin', '12%', '--materials', 'M25b'], ['! S-hollin sells no pack of M25b.']],
];

describe('what is printed of prices', () => {
  const { said, saidInTurn } = useSaidWhole();

  test('a rise that is tried, and what it would touch', async () => {
    await said('job', 'new', '--title', 'Hall', '--sizes', 'T07');
    await said('quote', '--job', 'J02', '--issue');
    expect(await saidInTurn(turns)).toEqual(turns);
  });

  test('what two suppliers sell, the taken one first', async () => {
    const pack = { id: 'M01-20', material: 'M01', amount: 20, supplier: 'S-greavel' };
    await said('act', 'put', JSON.stringify({ kind: 'pack', record: pack }));
    await said('act', 'putPrice', JSON.stringify({ ...pack, id: undefined, priceCoins: 1200 }));
    const run = await said('run', '--sizes', 'T03,T07', '--materials', 'M01,M04,M25b');
    expect(
      run.slice(run.indexOf('                  supplier                     packs     goods  run landed')).slice(0, 6),
    ).toEqual([
      '                  supplier                     packs     goods  run landed',
      '---  -----------  ---------------------------  --------  -----  ----------',
      'M01  taken        Greavel Pane Cutters         2 x 20 L  24.00       83.87',
      "     second best  Hollin Lane Growers' Supply  3 x 10 L  29.40       89.27",
      '',
      'together 64.37, alone 62.17; landed 83.87 against 101.17, saved 17.30 cr',
    ]);
  });
});
