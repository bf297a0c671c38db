import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const steps: readonly Said[] = [
  [
    ['tub', 'start', 'C1', '--on', '2026-10-01'],
    [
      'tub  kind              started     animals  may give  next harvest  feed',
      '---  ----------------  ----------  -------  --------  ------------  ----------  -------',
      'K1   White springtail  2026-10-01    1,250         0  2026-10-29    2026-10-08  growing',
      '',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Isopods and springtails sent over a border may need a permit. (Permits office decides; from memory)',
      'Caution: Use a dense cup: at 5 % a day it takes half as many again. (Grower decides; common practice, no source)',
    ],
  ],
  [
    ['tub', 'count', 'K1', '13000', '--on', '2026-11-30'],
    [
      'tub  kind              started     animals  may give  next harvest  feed',
      '---  ----------------  ----------  -------  --------  ------------  ----------  -----',
      'K1   White springtail  2026-10-01   13,000     6,500  2026-11-30    2026-12-03  ready',
      '',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Isopods and springtails sent over a border may need a permit. (Permits office decides; from memory)',
      'Caution: Use a dense cup: at 5 % a day it takes half as many again. (Grower decides; common practice, no source)',
    ],
  ],
  [
    ['tub', 'harvest', 'K1', '2130', '--on', '2026-11-30'],
    [
      'tub  kind              started     animals  may give  next harvest  feed',
      '---  ----------------  ----------  -------  --------  ------------  ----------  -----',
      'K1   White springtail  2026-10-01    6,500         0  2026-12-14    2026-12-03  ready',
      '',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Isopods and springtails sent over a border may need a permit. (Permits office decides; from memory)',
      'Caution: Use a dense cup: at 5 % a day it takes half as many again. (Grower decides; common practice, no source)',
    ],
  ],
  [
    ['tub', 'list', '--on', '2026-12-14'],
    [
      'tub  kind              started     animals  may give  next harvest  feed',
      '---  ----------------  ----------  -------  --------  ------------  ----------  -----',
      'K1   White springtail  2026-10-01   10,332     5,166  2026-12-14    2026-12-17  ready',
      '',
      'Caution: Keep pure cultures in two places; quarantine what carries grain mites or predatory mites. (Grower decides; common practice, no source)',
      'Caution: Never release animals, plants or soil outdoors. (Wildlife authority decides; common practice, no source)',
      'Caution: Isopods and springtails sent over a border may need a permit. (Permits office decides; from memory)',
      'Caution: Use a dense cup: at 5 % a day it takes half as many again. (Grower decides; common practice, no source)',
    ],
  ],
  [['tub', 'end', 'K1', '--on', '2026-12-20'], ['No tub stands.']],
];

describe('what is printed of tubs', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('a tub started, counted, floated, looked at and ended', async () => {
    expect(await saidInTurn(steps)).toEqual(steps);
  });
});
