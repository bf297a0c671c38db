import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const steps: readonly Said[] = [
  [['order', 'list', '--on', '2027-03-01'], ['No orders.']],
  [
    ['order', 'new', 'S-hollin', 'M01-45x2', '--on', '2027-03-01'],
    [
      'order   supplier                     for    on          due         lines in  goods  state',
      '------  ---------------------------  -----  ----------  ----------  --------  -----  -----',
      "O-0001  Hollin Lane Growers' Supply  store  2027-03-01  2027-03-04  0 of 1    63.00  open",
      '',
      '   goods                  packs     asked  due         for    in  to come  paid',
      '-  ---------------------  --------  -----  ----------  -----  --  -------  ----',
      '1  Expanded clay 8-16 mm  2 × 45 L  31.50  2027-03-04  store   0        2  0.00',
      '',
      'Caution: Crystalline silica and mould dust: wet it first, never sweep dry, wear a mask. (Workshop safety lead decides; 29 CFR 1910.1053)',
      'Caution: Read the weight on the bag or box before you lift it; split the load or take a trolley. (Crew leader decides; from memory)',
    ],
  ],
  [
    ['order', 'in', 'O-0001', '--lines', '1=1@32.00', '--on', '2027-03-05'],
    [
      'order   supplier                     for    on          due         lines in  goods  state',
      '------  ---------------------------  -----  ----------  ----------  --------  -----  -------------------',
      "O-0001  Hollin Lane Growers' Supply  store  2027-03-01  2027-03-04  0 of 1    63.00  part in, 1 day late",
      '',
      '   goods                  packs     asked  due         for    in  to come   paid',
      '-  ---------------------  --------  -----  ----------  -----  --  -------  -----',
      '1  Expanded clay 8-16 mm  2 × 45 L  31.50  2027-03-04  store   1        1  32.00',
      '',
      'Caution: Crystalline silica and mould dust: wet it first, never sweep dry, wear a mask. (Workshop safety lead decides; 29 CFR 1910.1053)',
      'Caution: Read the weight on the bag or box before you lift it; split the load or take a trolley. (Crew leader decides; from memory)',
    ],
  ],
  [
    ['store', 'M01', '--on', '2027-03-04'],
    [
      '     goods                  on hand    free  kept for  in quarantine  on order  least',
      '---  ---------------------  -------  ------  --------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm   7.00\u00a0L  7.00\u00a0L                            90.00\u00a0L',
    ],
  ],
  [
    ['store', 'M01', '--on', '2027-03-05'],
    [
      '     goods                  on hand     free  kept for  in quarantine  on order  least',
      '---  ---------------------  -------  -------  --------  -------------  --------  -----',
      'M01  Expanded clay 8-16 mm  52.00\u00a0L  52.00\u00a0L                            45.00\u00a0L',
    ],
  ],
  [
    ['order', 'in', 'O-0001', '--lines', '1=3', '--on', '2027-03-06'],
    [
      '! Of line 1 of O-0001, Expanded clay 8-16 mm, 3 came and 1 of 2 were still to come. With a note more is taken in.',
    ],
  ],
  [
    ['order', 'close', 'O-0001', '--on', '2027-03-09'],
    [
      'order   supplier                     for    on          due         lines in  goods  state',
      '------  ---------------------------  -----  ----------  ----------  --------  -----  ------',
      "O-0001  Hollin Lane Growers' Supply  store  2027-03-01  2027-03-04  0 of 1    63.00  closed",
      '',
      '   goods                  packs     asked  due         for    in  to come   paid',
      '-  ---------------------  --------  -----  ----------  -----  --  -------  -----',
      '1  Expanded clay 8-16 mm  2 × 45 L  31.50  2027-03-04  store   1        0  32.00',
      '',
      'Caution: Crystalline silica and mould dust: wet it first, never sweep dry, wear a mask. (Workshop safety lead decides; 29 CFR 1910.1053)',
      'Caution: Read the weight on the bag or box before you lift it; split the load or take a trolley. (Crew leader decides; from memory)',
    ],
  ],
  [
    ['order', 'new', 'S-marlvale', 'P13-1x13,P14-1x2', '--on', '2027-03-08'],
    [
      'order   supplier              for    on          due         lines in  goods  state',
      '------  --------------------  -----  ----------  ----------  --------  -----  -----',
      'O-0002  Marlvale Plant House  store  2027-03-08  2027-03-16  0 of 2    76.00  open',
      '',
      '   goods                     packs      asked  due         for    in  to come  paid',
      '-  ------------------------  ---------  -----  ----------  -----  --  -------  ----',
      '1  Tillandsia bulbosa        13 pieces   5.20  2027-03-16  store   0       13  0.00',
      '2  Microgramma heterophylla  2 pieces    4.20  2027-03-16  store   0        2  0.00',
      '',
      'Caution: Insecticide dips are in use at growers and hit isopods and springtails: bare-root, rinse, 28 to 30 days apart. No systemic products. (Plant house decides; from memory)',
      'Caution: Name plants with oxalate or latex where children come. (Poison information centre decides; from memory)',
    ],
  ],
  [
    ['job', 'new', '--title', 'Reading room', '--sizes', 'T05'],
    [
      'job  title         state    sizes  handover  next',
      '---  ------------  -------  -----  --------  ---------------------------------',
      'J02  Reading room  enquiry  T05              answer the enquiry, by DAY',
    ],
  ],
  [
    ['order', 'place', '--jobs', 'J02', '--suppliers', 'S-hollin,S-greavel', '--on', '2027-03-08'],
    [
      'order   supplier                     for  on          due         lines in   goods  state',
      '------  ---------------------------  ---  ----------  ----------  --------  ------  -----',
      'O-0003  Greavel Pane Cutters         J02  2027-03-08  2027-03-22  0 of 3    169.60  open',
      "O-0004  Hollin Lane Growers' Supply  J02  2027-03-08  2027-03-11  0 of 8     67.10  open",
      '! J02 has no deposit yet: order nothing that is cut or grown for it.',
      '! Not ordered from Saltbarrow Bark and Timber: 81.90 cr of goods.',
      '! Not ordered from Marlvale Plant House: 70.40 cr of goods.',
      '! Not ordered from Ternfield Lamp and Pump: 132.50 cr of goods.',
    ],
  ],
  [
    ['order', 'place', '--jobs', 'J02', '--suppliers', 'S-hollin', '--on', '2027-03-08'],
    [
      'Nothing to order.',
      '! J02 has no deposit yet: order nothing that is cut or grown for it.',
      '! Not ordered from Saltbarrow Bark and Timber: 81.90 cr of goods.',
      '! Not ordered from Marlvale Plant House: 70.40 cr of goods.',
      '! Not ordered from Ternfield Lamp and Pump: 132.50 cr of goods.',
      "! Nothing is to be bought from Hollin Lane Growers' Supply.",
    ],
  ],
  [
    ['order', 'show', 'O-0003', '--on', '2027-03-20'],
    [
      'order   supplier              for  on          due         lines in   goods  state',
      '------  --------------------  ---  ----------  ----------  --------  ------  -----------------',
      'O-0003  Greavel Pane Cutters  J02  2027-03-08  2027-03-22  0 of 3    169.60  open, 4 days late',
      '',
      '   goods                          packs                                 asked  due         for  in  to come  paid',
      '-  -----------------------------  -----------------------------------  ------  ----------  ---  --  -------  ----',
      '1  Rectangle 600 × 445 × 600      1 piece                              148.00  2027-03-22  J02   0        1  0.00',
      '2  Cutting and edging a pane      1 piece                               10.00  2027-03-16  J02   0        1  0.00',
      '3  Cover glass 4 mm, cut to size  1 of 597 × 418 mm, 4 mm glass (J02)   11.60  2027-03-16  J02   0        1  0.00',
      '',
      'Caution: Look at seams and glass before anything goes in; a chip or a loose seam goes back. (Tank maker decides; common practice, no source)',
      'Caution: Work out the weight before anyone lifts. What the crew cannot lift is built in place or goes on a trolley; lift from the base, never by the top frame. (Crew leader decides; from memory)',
      'Caution: Glass and cut mesh have sharp edges: cut-resistant gloves and closed shoes; carry a pane upright, one at a time. (Builder decides; common practice, no source)',
      "Caution: Never zero ventilation; ground edges, labelled panes, out of a child's reach. (Builder decides; common practice, no source)",
    ],
  ],
  [
    ['order', 'list', '--open', '--on', '2027-03-20'],
    [
      'order   supplier                     for  on          due         lines in   goods  state',
      '------  ---------------------------  ---  ----------  ----------  --------  ------  -----------------',
      'O-0002  Marlvale Plant House         J02  2027-03-08  2027-03-16  0 of 2     76.00  open, 4 days late',
      'O-0003  Greavel Pane Cutters         J02  2027-03-08  2027-03-22  0 of 3    169.60  open, 4 days late',
      "O-0004  Hollin Lane Growers' Supply  J02  2027-03-08  2027-03-11  0 of 8     67.10  open, 9 days late",
    ],
  ],
  [['order', 'close', 'O-0009', '--on', '2027-03-20'], ['! There is no order O-0009. Did you mean O-0001?']],
  [['order', 'new', 'S-nobody', 'M01-10x1'], ['! There is no supplier S-nobody.']],
];

describe('what is printed of orders', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('placed for the store and for a job, taken in by parts, closed', async () => {
    // An enquiry is answered by a day that counts from today.
    const undated = (line: string) => line.replace(/(?<=enquiry, by )\d{4}-\d{2}-\d{2}$/, 'DAY');
    const said = await saidInTurn(steps);
    expect(said.map(([argv, says]) => [argv, says.map(undated)])).toEqual(steps);
  });
});
