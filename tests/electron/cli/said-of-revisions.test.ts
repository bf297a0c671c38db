import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { previousOpen } from '#shared-calc/calendar/work-calendar.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { today } from '#electron/service/today.ts';
import { type Said, useSaidWhole } from './said-whole.ts';
import { notes, unasked } from './unasked-t05.ts';

const day = today();
const calendar = calendarOf(demoRecords());

/** So many days from today, or the last open day before. */
function openIn(days: number): string {
  return previousOpen(addDays(day, days), calendar);
}

/** A quote that the client, we and the suppliers change. */
const revised: readonly Said[] = [
  [
    ['job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--set', 'soil_rise=0 mm'],
    [
      'job  title         state    sizes  handover  next',
      '---  ------------  -------  -----  --------  ---------------------------------',
      `J02  Reading room  enquiry  T05              answer the enquiry, by ${openIn(3)}`,
    ],
  ],
  [
    ['quote', '--job', 'J02', '--issue'],
    [
      'quote Q-0001 A issued',
      'for the builder only         cost  margin   price  tax',
      '-------------------------  ------  ------  ------  --------',
      'Tank                       148.00    30 %  211.43  standard',
      'Drainage, soil and leaves   46.89    40 %   78.15  standard',
      'Wood, cork and background   92.40    40 %  154.00  standard',
      'Cover glass                 21.60    35 %   33.23  standard',
      'Light                       88.00    30 %  125.71  standard',
      'Misting                     60.50    30 %   86.43  standard',
      'Plants                      71.50    45 %  130.00  low',
      'Microfauna                  14.00    60 %   35.00  low',
      'Work                       440.75    25 %  587.67  standard',
      ...notes('59.38'),
      '',
      'before tax 1441.62',
      'tax, standard 153.19',
      'tax, low 6.60',
      'price 1601.41 cr, deposit 645.00, 10.25 h',
      '',
      'Caution: Nobody has asked for a residual-current device: ask before anything is plugged in. (Qualified electrician decides; from memory)',
      'Caution: Reptiles and amphibians should not be kept with under-fives, people over 65 or with weak immunity, nor in childcare rooms: carriers look healthy. Wash hands after any contact with the tank or its water. (School or centre health lead and public-health office decide; CDC)',
      'Caution: Residual-current protection of 30 mA or less, drip loops, no sockets under mist, the transformer off the floor. (Qualified electrician decides; from memory)',
      'Caution: Where children come, fix stand and tank to the wall: they can be pulled over. (Building owner decides; common practice, no source)',
      'Caution: Standing water below the mesh gap always; a sour smell means drain now. (Builder decides; common practice, no source)',
      'Caution: Not a floor verdict: feet concentrate it, the floor spreads it. (Building owner and structural engineer decide; common practice, no source)',
      ...unasked('59.38').map(([says]) => `! Against it, not known yet: T05: ${says}`),
      "! Against it, may not hold: T05: 28.52\u00a0degC on a hot day is above the animals' ceiling of 27\u00a0degC. It may not: warming factor at 1.60. Measure it.",
      '! Against it, may not hold: T05: The drainage fills in 23.3\u00a0d; plan to drain or mist less. It may not: air factor at 0.50. Measure it.',
      '! Against it, watch: T05: A pane of this length wants 5\u00a0mm or a rail under it.',
    ],
  ],
  [
    ['job', 'set', 'J02', 'litter=20 mm'],
    [
      'job  title         state   sizes  handover  next',
      '---  ------------  ------  -----  --------  --------------------------------',
      `J02  Reading room  quoted  T05              ask about Q-0001A, by ${openIn(18)}`,
    ],
  ],
  [
    ['job', 'set', 'J02', 'T05.drainage_waste=5 %', '--by', 'us'],
    [
      'job  title         state   sizes  handover  next',
      '---  ------------  ------  -----  --------  --------------------------------',
      `J02  Reading room  quoted  T05              ask about Q-0001A, by ${openIn(18)}`,
    ],
  ],
  [
    ['book', 'import-prices', './risen.csv'],
    [
      'material  pack    from        before   price',
      '--------  ------  ----------  ------  ------',
      `M15       100 g   ${day}    5.20    6.00`,
      `T05       1 each  ${day}  148.00  155.00`,
      '',
      '2 prices taken in.',
    ],
  ],
  [
    ['quote', '--job', 'J02', '--issue'],
    [
      'quote Q-0001 B issued',
      'for the builder only         cost  margin   price  tax',
      '-------------------------  ------  ------  ------  --------',
      'Tank                       155.00    30 %  221.43  standard',
      'Drainage, soil and leaves   45.78    40 %   76.30  standard',
      'Wood, cork and background   92.40    40 %  154.00  standard',
      'Cover glass                 21.60    35 %   33.23  standard',
      'Light                       88.00    30 %  125.71  standard',
      'Misting                     60.50    30 %   86.43  standard',
      'Plants                      71.50    45 %  130.00  low',
      'Microfauna                  14.00    60 %   35.00  low',
      'Work                       440.75    25 %  587.67  standard',
      ...notes('59.29'),
      '',
      'before tax 1449.77',
      'tax, standard 154.17',
      'tax, low 6.60',
      'price 1610.54 cr, deposit 645.00, 10.25 h',
      '',
      'Caution: Nobody has asked for a residual-current device: ask before anything is plugged in. (Qualified electrician decides; from memory)',
      'Caution: Reptiles and amphibians should not be kept with under-fives, people over 65 or with weak immunity, nor in childcare rooms: carriers look healthy. Wash hands after any contact with the tank or its water. (School or centre health lead and public-health office decide; CDC)',
      'Caution: Residual-current protection of 30 mA or less, drip loops, no sockets under mist, the transformer off the floor. (Qualified electrician decides; from memory)',
      'Caution: Where children come, fix stand and tank to the wall: they can be pulled over. (Building owner decides; common practice, no source)',
      'Caution: Standing water below the mesh gap always; a sour smell means drain now. (Builder decides; common practice, no source)',
      'Caution: Not a floor verdict: feet concentrate it, the floor spreads it. (Building owner and structural engineer decide; common practice, no source)',
      ...unasked('59.29').map(([says]) => `! Against it, not known yet: T05: ${says}`),
      "! Against it, may not hold: T05: 28.52\u00a0degC on a hot day is above the animals' ceiling of 27\u00a0degC. It may not: warming factor at 1.60. Measure it.",
      '! Against it, may not hold: T05: The drainage fills in 23.3\u00a0d; plan to drain or mist less. It may not: air factor at 0.50. Measure it.',
      '! Against it, watch: T05: A pane of this length wants 5\u00a0mm or a rail under it.',
    ],
  ],
  [
    ['changed', 'Q-0001A', 'Q-0001B'],
    [
      'by        line                         from      to  difference',
      '--------  -------------------------  ------  ------  ----------',
      'client    Drainage, soil and leaves   78.15   75.05       -3.10',
      'us        Drainage, soil and leaves   75.05   75.35        0.30',
      'supplier  Tank                       211.43  221.43       10.00',
      'supplier  Drainage, soil and leaves   75.35   76.30        0.95',
      '',
      'before tax: client -3.10, us 0.30, suppliers 10.95, in all 8.15',
    ],
  ],
];

describe('what is printed of two revisions', () => {
  const { file, saidInTurn } = useSaidWhole();

  test('every change with who made it', async () => {
    file('risen.csv', 'material,pack,unit,price,from', `M15,100,g,6.00,${day}`, `T05,1,each,155.00,${day}`);
    expect(await saidInTurn(revised)).toEqual(revised);
  });
});
