import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const steps: readonly Said[] = [
  [
    ['store', 'M01', '--on', '2027-03-08'],
    [
      '     goods                  on hand    free  kept for  in quarantine  on order  least',
      '---  ---------------------  -------  ------  --------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm   7.00\u00a0L  7.00\u00a0L',
    ],
  ],
  [
    ['store', 'in', 'M01', '13 L', '--paid', '9.80', '--best', '2027-12-01', '--on', '2027-03-08'],
    [
      '     goods                  on hand     free  kept for  in quarantine  on order  least',
      '---  ---------------------  -------  -------  --------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  20.00\u00a0L  20.00\u00a0L',
    ],
  ],
  [
    ['store', 'keep', 'M01', '5 L', '--job', 'J01', '--on', '2027-03-08'],
    [
      '     goods                  on hand     free  kept for     in quarantine  on order  least',
      '---  ---------------------  -------  -------  -----------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  20.00\u00a0L  15.00\u00a0L  J01: 5.00\u00a0L',
    ],
  ],
  [
    ['store', 'use', 'M01', '2 L', '--job', 'J01', '--on', '2027-03-08'],
    [
      '     goods                  on hand     free  kept for     in quarantine  on order  least',
      '---  ---------------------  -------  -------  -----------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  18.00\u00a0L  15.00\u00a0L  J01: 3.00\u00a0L',
    ],
  ],
  [['store', 'use', 'M01', '40 L', '--on', '2027-03-08'], ['! The store has 18 L; count it first.']],
  [
    ['store', 'waste', 'M01', '1 L', '--note', 'spilt', '--on', '2027-03-09'],
    [
      '     goods                  on hand     free  kept for     in quarantine  on order  least',
      '---  ---------------------  -------  -------  -----------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  17.00\u00a0L  14.00\u00a0L  J01: 3.00\u00a0L',
    ],
  ],
  [
    ['store', 'sell', 'M01', '1 L', '--got', '1.50', '--on', '2027-03-09'],
    [
      '     goods                  on hand     free  kept for     in quarantine  on order  least',
      '---  ---------------------  -------  -------  -----------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  16.00\u00a0L  13.00\u00a0L  J01: 3.00\u00a0L',
    ],
  ],
  [
    ['store', 'count', 'M01', '12.5 L', '--on', '2027-03-10'],
    [
      '     goods                  on hand    free  kept for     in quarantine  on order  least',
      '---  ---------------------  -------  ------  -----------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  12.50\u00a0L  9.50\u00a0L  J01: 3.00\u00a0L',
    ],
  ],
  [
    ['store', 'least', 'M01', '20 L', '60 L', '--on', '2027-03-10'],
    [
      '     goods                  on hand    free  kept for     in quarantine  on order    least',
      '---  ---------------------  -------  ------  -----------  -------------  --------  -------',
      'M01  Expanded clay 8-16 mm  12.50\u00a0L  9.50\u00a0L  J01: 3.00\u00a0L                           20.00\u00a0L',
    ],
  ],
  [
    ['store', '--on', '2027-03-10', '--use', '2027-12-02'],
    [
      '     goods                            on hand      free  kept for     in quarantine  on order    least',
      '---  ------------------------------  --------  --------  -----------  -------------  --------  -------',
      'M01  Expanded clay 8-16 mm            12.50\u00a0L         0  J01: 3.00\u00a0L                           20.00\u00a0L',
      'M05  Coir, as hydrated litres          6.00\u00a0L    6.00\u00a0L',
      'M08  Charcoal 4-10 mm, no additives    2.00\u00a0L    2.00\u00a0L',
      'M15  Small oak leaves, dry           500.00\u00a0g  500.00\u00a0g',
      'M18  Seed pods, mixed                      10        10',
      'M24  Sealant 310 mL, no fungicide           1         1',
      'M28  Timer, two-way                         1         1',
      'M30  Max-min thermometer-hygrometer         2         2',
    ],
  ],
  [['store', 'M99', '--on', '2027-03-10'], ['! No goods called M99 in the books.']],
];

describe('what is printed of the store', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('goods that come in, are kept, used, lost, sold and counted', async () => {
    expect(await saidInTurn(steps)).toEqual(steps);
  });
});
