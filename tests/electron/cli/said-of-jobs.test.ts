import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';
import { unasked } from './unasked-t05.ts';

const steps: readonly Said[] = [
  [
    ['jobs'],
    [
      'job  title               state    sizes        handover  next',
      '---  ------------------  -------  -----------  --------  -----------------------------',
      'J01  Ferry waiting hall  enquiry  T03 T07 T08            Survey the shelf and the hall',
    ],
  ],
  [
    ['job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--handover', '2027-04-28'],
    [
      'job  title         state    sizes  handover    next',
      '---  ------------  -------  -----  ----------  ---------------------------------',
      'J02  Reading room  enquiry  T05    2027-04-28  answer the enquiry, by YYYY-MM-DD',
    ],
  ],
  [
    ['job', 'set', 'J02', 'litter=20 mm', 'T05.drainage_waste=5 %'],
    [
      'job  title         state    sizes  handover    next',
      '---  ------------  -------  -----  ----------  ---------------------------------',
      'J02  Reading room  enquiry  T05    2027-04-28  answer the enquiry, by YYYY-MM-DD',
    ],
  ],
  [
    ['job', 'state', 'J02', 'accepted'],
    [
      'job  title         state     sizes  handover    next',
      '---  ------------  --------  -----  ----------  --------------------',
      'J02  Reading room  accepted  T05    2027-04-28  waits for the client',
      '! Nothing is frozen: J02 has no quote and cannot be priced yet. It follows its house.',
      '! Against it, quote: No quote of J02 has been issued.',
      ...unasked('64.48').map(([says]) => `! Against it, not known yet: T05: ${says}`),
      "! Against it, may not hold: T05: 28.69\u00a0degC on a hot day is above the animals' ceiling of 27\u00a0degC. It may not: warming factor at 1.60. Measure it.",
      '! Against it, may not hold: T05: The drainage fills in 23.3\u00a0d; plan to drain or mist less. It may not: air factor at 0.50. Measure it.',
      '! Against it, watch: T05: A pane of this length wants 5\u00a0mm or a rail under it.',
    ],
  ],
  [
    ['job', 'deposit', 'J02', '645.00', '--on', '2027-03-15'],
    [
      'job  title         state       sizes  handover    next',
      '---  ------------  ----------  -----  ----------  ---------------------------',
      'J02  Reading room  deposit in  T05    2027-04-28  order plants, by YYYY-MM-DD',
      '! Against it, quote: No quote of J02 has been issued.',
      '! Against it, not known yet: T05: Nobody has asked whether children under five come near it. Ask the client.',
      '! Against it, not known yet: T05: Nobody has asked whether people over 65 or with weak immunity come near it. Ask the client.',
      '! Against it, not known yet: T05: Carried upright, never on its side, the tank is 455\u00a0mm at its narrowest outside; nobody has measured the way in. Measure it there.',
      '! Against it, not known yet: T05: Nobody has measured all of the clear room: length 610\u00a0mm, clear not asked; depth 455\u00a0mm, clear not asked; height with its cover 609\u00a0mm, clear not asked. Measure it there.',
      '! Against it, not known yet: T05: Filled it weighs 64.48\u00a0kg at worst, with the drain blocked; nobody has asked what the shelf is rated for. Ask the building owner.',
      '! Against it, not known yet: T05: Nobody has asked whether the sun strikes the glass; the hottest day counts none. Ask the caretaker.',
      "! Against it, not known yet: T05: No kind named: ceiling, floor and band are the house's. Whether it crushes small plants is not known yet.",
      "! Against it, may not hold: T05: 28.69\u00a0degC on a hot day is above the animals' ceiling of 27\u00a0degC. It may not: warming factor at 1.60. Measure it.",
      '! Against it, may not hold: T05: The drainage fills in 23.3\u00a0d; plan to drain or mist less. It may not: air factor at 0.50. Measure it.',
      '! Against it, watch: T05: A pane of this length wants 5\u00a0mm or a rail under it.',
    ],
  ],
  [
    ['job', 'copy', 'J02'],
    [
      'job  title                 state    sizes  handover  next',
      '---  --------------------  -------  -----  --------  ---------------------------------',
      'J03  Copy of Reading room  enquiry  T05              answer the enquiry, by YYYY-MM-DD',
    ],
  ],
  [
    ['job', 'sizes', 'J03', 'T05,T07x2'],
    [
      'job  title                 state    sizes      handover  next',
      '---  --------------------  -------  ---------  --------  ---------------------------------',
      'J03  Copy of Reading room  enquiry  T05 T07x2            answer the enquiry, by YYYY-MM-DD',
    ],
  ],
  [
    ['jobs'],
    [
      'job  title                 state       sizes        handover    next',
      '---  --------------------  ----------  -----------  ----------  ---------------------------------',
      'J01  Ferry waiting hall    enquiry     T03 T07 T08              Survey the shelf and the hall',
      'J02  Reading room          deposit in  T05          2027-04-28  order plants, by YYYY-MM-DD',
      'J03  Copy of Reading room  enquiry     T05 T07x2                answer the enquiry, by YYYY-MM-DD',
    ],
  ],
];

describe('what is printed of jobs', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('a job from enquiry to deposit, a copy of it, and the board', async () => {
    const turns = await saidInTurn(steps);
    // What is next, and whether the prices of that month hold already, depends on the day on which the test runs.
    expect(
      turns.map(([argv, says]) => [
        argv,
        says
          .filter((line) => !/: \d+ prices missing: /.test(line))
          .map((line) => line.replace(/by [\d-]{10}$/, 'by YYYY-MM-DD')),
      ]),
    ).toEqual(steps);
  });
});
