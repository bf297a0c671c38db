import { describe, expect, test } from 'vitest';
import { type Said, useSaidWhole } from './said-whole.ts';

const batch = '{"kind":"A1","count":6,"cameOn":"2027-02-26"}';
const frogs = '{"job":"J01","column":"T07","animalKind":"A1","animals":4}';
const early =
  '{"batch":"AB-001","size":"J01-T07","count":4,"on":"2027-03-08","anyway":"the vet agrees","who":"R-builder"}';

const steps: readonly Said[] = [
  [['animals'], ['No batch of animals is written down.']],
  [
    ['act', 'newAnimalBatch', batch],
    [
      '       record',
      '-----  -----------------------',
      'added  batch of animals AB-001',
      '',
      'Done: batch AB-001: 6 of Small bold frog.',
    ],
  ],
  [
    ['act', 'setAnimals', frogs],
    ['         record', '-------  ------------', 'changed  size J01-T07', '', 'Done: animals of T07.'],
  ],
  [
    ['act', 'placeAnimals', '{"batch":"AB-001","size":"J01-T07","count":4,"on":"2027-03-08"}'],
    [
      '! Batch AB-001 is in quarantine until 27 April 2027, 50 days after 8 March 2027. To plan them in all the same, give a reason and who decides.',
    ],
  ],
  [
    ['act', 'placeAnimals', early],
    [
      '       record',
      '-----  -------------------------',
      'added  placing of animals AP-001',
      '',
      'Done: 4 of batch AB-001 into J01-T07.',
    ],
  ],
  [
    ['animals', '--on', '2027-03-08'],
    [
      "batch   kind             animals  came        from  quarantine              vet's tests  planned                       left",
      '------  ---------------  -------  ----------  ----  ----------------------  -----------  ----------------------------  ----',
      'AB-001  Small bold frog        6  2027-02-26  own   50 d, until 2027-04-27               4 into J01-T07 on 2027-03-08     2',
    ],
  ],
  [
    ['animals', '--on', '2027-04-27'],
    [
      "batch   kind             animals  came        from  quarantine  vet's tests  planned                       left",
      '------  ---------------  -------  ----------  ----  ----------  -----------  ----------------------------  ----',
      'AB-001  Small bold frog        6  2027-02-26  own   over                     4 into J01-T07 on 2027-03-08     2',
    ],
  ],
];

describe('what is printed of animals', () => {
  const { saidInTurn } = useSaidWhole('2027-03-08');

  test('a batch that stands apart, planned in all the same by somebody who says why', async () => {
    expect(await saidInTurn(steps)).toEqual(steps);
  });
});
