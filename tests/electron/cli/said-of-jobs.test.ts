import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { today } from '#electron/service/today.ts';
import { type Said, useSaidWhole } from './said-whole.ts';

const day = today();

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
      '---  ------------  -------  -----  ----------  ---------------',
      'J02  Reading room  enquiry  T05    2027-04-28  Survey the site',
    ],
  ],
  [
    ['job', 'set', 'J02', 'litter=20 mm', 'T05.drainage_waste=5 %'],
    [
      'job  title         state    sizes  handover    next',
      '---  ------------  -------  -----  ----------  ---------------',
      'J02  Reading room  enquiry  T05    2027-04-28  Survey the site',
    ],
  ],
  [
    ['job', 'state', 'J02', 'accepted'],
    [
      'job  title         state     sizes  handover    next',
      '---  ------------  --------  -----  ----------  ----------------',
      'J02  Reading room  accepted  T05    2027-04-28  Take the deposit',
      '! No quote of J02 has been issued.',
    ],
  ],
  [
    ['job', 'deposit', 'J02', '645.00', '--on', '2027-03-15'],
    [
      'job  title         state       sizes  handover    next',
      '---  ------------  ----------  -----  ----------  ------------------------------',
      'J02  Reading room  deposit in  T05    2027-04-28  Order on the next shopping run',
    ],
  ],
  [
    ['job', 'copy', 'J02'],
    [
      'job  title                 state    sizes  handover  next',
      '---  --------------------  -------  -----  --------  ---------------',
      'J03  Copy of Reading room  enquiry  T05              Survey the site',
    ],
  ],
  [
    ['job', 'sizes', 'J03', 'T05,T07x2'],
    [
      'job  title                 state    sizes      handover  next',
      '---  --------------------  -------  ---------  --------  ---------------',
      'J03  Copy of Reading room  enquiry  T05 T07x2            Survey the site',
    ],
  ],
  [
    ['jobs'],
    [
      'job  title                 state       sizes        handover    next',
      '---  --------------------  ----------  -----------  ----------  ------------------------------',
      'J01  Ferry waiting hall    enquiry     T03 T07 T08              Survey the shelf and the hall',
      'J02  Reading room          deposit in  T05          2027-04-28  Order on the next shopping run',
      'J03  Copy of Reading room  enquiry     T05 T07x2                Survey the site',
    ],
  ],
];

/** A quote that the client, we and the suppliers change. */
const revised: readonly Said[] = [
  [
    ['job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--set', 'soil_rise=0 mm'],
    [
      'job  title         state    sizes  handover  next',
      '---  ------------  -------  -----  --------  ---------------',
      'J02  Reading room  enquiry  T05              Survey the site',
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
      '',
      'before tax 1441.62',
      'tax, standard 153.19',
      'tax, low 6.60',
      'price 1601.41 cr, deposit 645.00, 10.25 h',
      '',
      'Caution: Standing water below the mesh gap always; a sour smell means drain now. (Builder decides; common practice, no source)',
      'Caution: Not a floor verdict: feet concentrate it, the floor spreads it. (Building owner and structural engineer decide; common practice, no source)',
    ],
  ],
  [
    ['job', 'set', 'J02', 'litter=20 mm'],
    [
      'job  title         state   sizes  handover  next',
      '---  ------------  ------  -----  --------  ---------------------------------',
      `J02  Reading room  quoted  T05              Ask for the answer, by ${addDays(day, 21)}`,
    ],
  ],
  [
    ['job', 'set', 'J02', 'T05.drainage_waste=5 %', '--by', 'us'],
    [
      'job  title         state   sizes  handover  next',
      '---  ------------  ------  -----  --------  ---------------------------------',
      `J02  Reading room  quoted  T05              Ask for the answer, by ${addDays(day, 21)}`,
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
      '',
      'before tax 1449.77',
      'tax, standard 154.17',
      'tax, low 6.60',
      'price 1610.54 cr, deposit 645.00, 10.25 h',
      '',
      'Caution: Standing water below the mesh gap always; a sour smell means drain now. (Builder decides; common practice, no source)',
      'Caution: Not a floor verdict: feet concentrate it, the floor spreads it. (Building owner and structural engineer decide; common practice, no source)',
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

const plans: readonly Said[] = [
  [
    ['prepare', '--sizes', 'T07', '--handover', '2027-04-28', '--on', '2027-03-08'],
    [
      'step             order by    done or in',
      '---------------  ----------  ----------',
      'plants           2027-03-10  2027-03-16',
      'springtails                  2027-03-18',
      'tank             2027-03-24  2027-04-07',
      'wood, cork       2027-03-30  2027-04-07',
      'panel                        2027-04-08',
      'media            2027-04-08  2027-04-13',
      'panes            2027-04-06  2027-04-14',
      'lamps            2027-04-12  2027-04-14',
      'leaves                       2027-04-14',
      'build                        2027-04-15',
      'handover                     2027-05-06',
      'call                         2027-05-13',
      'visit                        2027-06-03',
      'quarterly visit              2027-08-09',
      'quarterly visit              2027-11-04',
      'quarterly visit              2028-02-03',
      'yearly visit                 2028-05-05',
      '',
      '8 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 6 May.',
      'Order plants by Wednesday 10 March or the tank opens later still.',
      '',
      'Caution: Insecticide dips are in use at growers and hit isopods and springtails: bare-root, rinse, 28 to 30 days apart. No systemic products. (Plant house decides; from memory)',
      'Caution: Name plants with oxalate or latex where children come. (Poison information centre decides; from memory)',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Look at seams and glass before anything goes in; a chip or a loose seam goes back. (Tank maker decides; common practice, no source)',
      'Caution: Work out the weight before anyone lifts. What the crew cannot lift is built in place or goes on a trolley; lift from the base, never by the top frame. (Crew leader decides; from memory)',
      'Caution: Glass and cut mesh have sharp edges: cut-resistant gloves and closed shoes; carry a pane upright, one at a time. (Builder decides; common practice, no source)',
      'Caution: Wood and stone stand firm and cannot tip onto glass, door or animals; two people place what one cannot hold still. (Builder decides; common practice, no source)',
      'Caution: Collect only where the owner of the land allows it; protected land, and collecting to sell, need a permit. (Owner of the land and permits office decide; 36 CFR 2.1 and 223.239)',
      'Caution: Nothing sprayed and nothing from roadsides; no oleander, yew, laurel cherry, walnut or conifer. (Grower decides; from memory)',
      'Caution: Foam cans and sealant stand upright and cool, away from sparks, sun and children. (Maker of the product decides; from memory)',
      'Caution: Uncured foam can make the lungs sensitive for life: ventilate, gloves, no sanding without a mask. Vapour and acid smell must be gone before animals. (Maker of the product decides; occupational doctor if wheezing; from memory)',
      'Caution: Drill, saw and sand outdoors or under extraction: clamp the piece, eye protection, dust mask. (Workshop safety lead decides; common practice, no source)',
      'Caution: No fertiliser, perfumed or wetting-agent compost, no lime sand for frogs; worm casts at most 5 % of the mix. (Builder decides; vet if skin signs; common practice, no source)',
      'Caution: Washed low-salt grade; rinse until the run-off is under 0.5 mS/cm. (Builder decides; from memory)',
      'Caution: Crystalline silica and mould dust: wet it first, never sweep dry, wear a mask. (Workshop safety lead decides; 29 CFR 1910.1053)',
      'Caution: Gloves, cover cuts, wet down: composts carry fungus and Legionella. (Workshop safety lead decides; from memory)',
      'Caution: Read the weight on the bag or box before you lift it; split the load or take a trolley. (Crew leader decides; from memory)',
      "Caution: Never zero ventilation; ground edges, labelled panes, out of a child's reach. (Builder decides; common practice, no source)",
      'Caution: Residual-current protection of 30 mA or less, drip loops, no sockets under mist, the transformer off the floor. (Qualified electrician decides; from memory)',
      'Caution: Steam, boiling water and hot trays burn: stay by them, children out of the room. (Grower decides; common practice, no source)',
      'Caution: Clean is enough: a living tank is not sterile, and a bake does not sterilise. (Grower decides; common practice, no source)',
      "Caution: Never promise 'sterile' on a quote. (Grower decides; common practice, no source)",
      'Caution: Glass rides upright on foam, strapped so that nothing slides, tips or falls on it. (Driver decides; common practice, no source)',
      'Caution: Animals apart from the tank, 18 to 24 degC, dark, short. (Carrier and veterinary office decide; from memory)',
      'Caution: Not before max and min are recorded within the band for 24 to 72 h; feed present; one species a tank unless a specialist says otherwise; look daily for 28 days. (Experienced keeper and exotic-animal vet decide; common practice, no source)',
    ],
  ],
  [
    ['treat', '--leaves', '43.51 L', '--aim', 'sterile', '--way', 'steam'],
    [
      '',
      '------------  ------------------------------------------',
      'heat          15 min',
      'vent          10 min',
      'come up       26 min',
      'hold          51 min',
      'release       25 min',
      'a batch       127 min',
      'batches       4',
      'by the clock  508 min',
      'attended      56 min',
      'temperature   119.76 degC',
      'by            30 min at 121 degC (wrapped goods), z 10 K',
      '',
      'Warning: Whether it boils dry is not known yet: give the water and the power of the vessel. (Whoever services the vessel decides)',
      'Caution: Steam, boiling water and hot trays burn: stay by them, children out of the room. (Grower decides; common practice, no source)',
      'Caution: Vent 10 min before the weight goes on: trapped air makes it cooler than the gauge tells. Only with a core probe. (Whoever services the vessel decides; PNW 421)',
      'Caution: Never open it under pressure: wait for zero on the gauge, take the weight off, lift the lid away from your face. Never force it, never cool it with water. (Whoever services the vessel decides; PNW 421)',
      'Caution: Water to its mark, looked at every batch. Dial gauge checked yearly; a hardened safety plug is replaced. (Whoever services the vessel decides; PNW 421)',
      'Caution: Leaves in a cloth bag that lets steam through, on a rack, two thirds full at most: loose leaves block the vent. (Whoever services the vessel decides; common practice, no source)',
      "Caution: Never promise 'sterile' on a quote. (Grower decides; common practice, no source)",
      'Caution: Collect only where the owner of the land allows it; protected land, and collecting to sell, need a permit. (Owner of the land and permits office decide; 36 CFR 2.1 and 223.239)',
      'Caution: Nothing sprayed and nothing from roadsides; no oleander, yew, laurel cherry, walnut or conifer. (Grower decides; from memory)',
    ],
  ],
  [
    ['treat', '--leaves', '6 L', '--aim', 'clean'],
    [
      'way    batches  min  attended',
      '-----  -------  ---  --------  ---------',
      'steam        1   87        14',
      'boil         1   50        14  suggested',
      'bake         1   68        14',
    ],
  ],
  [
    ['cultures', '--builds', './season.csv', '--flies', '1400', '--on', '2027-05-01'],
    [
      'build       White springtail (springtail seed)',
      '----------  ----------------------------------',
      '2027-06-28                                2130',
      '2027-07-05                                1581',
      '2027-07-19                                1914',
      '',
      'tubs 2, spare 1, start by 2027-05-31, 1250 animals to a tub',
      '       start by',
      '-----  ----------',
      'tub 1  2027-05-31',
      'tub 2  2027-06-07',
      'flies: 10 tubs set up on 2027-04-17 for the first week',
      'flies: 4 tubs set up a week, 20 on the shelf',
      '',
      'Warning: No tub of white springtail stands to split: start a new line, or buy the starter animals. (Grower decides)',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Isopods and springtails sent over a border may need a permit. (Permits office decides; from memory)',
      'Caution: Use a dense cup: at 5 % a day it takes half as many again. (Grower decides; common practice, no source)',
      'Caution: A named feeder, a fly supply, cover for school holidays, calcium and D3 dusting; glass passes no useful UVB. (Keeper and vet decide; common practice, no source)',
    ],
  ],
];

describe('what is printed of jobs', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('a job from enquiry to deposit, a copy of it, and the board', async () => {
    expect(await saidInTurn(steps)).toEqual(steps);
  });
});

describe('what is printed of two revisions', () => {
  const { file, saidInTurn } = useSaidWhole();

  test('every change with who made it', async () => {
    file('risen.csv', 'material,pack,unit,price,from', `M15,100,g,6.00,${day}`, `T05,1,each,155.00,${day}`);
    expect(await saidInTurn(revised)).toEqual(revised);
  });
});

describe('what is printed of preparing', () => {
  const { file, said } = useSaidWhole('2027-03-08');

  test.each(plans)('%j', async (argv, says) => {
    file('season.csv', 'date,tank,count', '2027-07-19,T08,1', '2027-06-28,T07,2', '2027-07-05,T03,3');
    expect(await said(...argv)).toEqual(says);
  });
});
