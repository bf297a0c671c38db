import { describe, expect, test } from 'vitest';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();

function saidRows(refused: ReturnType<typeof importRecords>['refused']) {
  return refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) }));
}
const t07 = records.tank.get('T07');

describe('importRecords, tanks', () => {
  test('a known code is changed where the list says so, any other is new, and nothing else moves', () => {
    const read = importRecords(
      'tank',
      'code,shape,length,depth,height,dam,glass,supplier,own\nT07,,,,,140,,,\nT20,cylinder,12 in,,500,,5,greavel pane cutters,yes\n',
      records,
    );
    expect([read.taken, saidRows(read.refused), read.change]).toEqual([
      [
        { row: 2, code: 'T07', is: 'changed', touches: ['dam'] },
        { row: 3, code: 'T20', is: 'new', touches: ['shape', 'length', 'height', 'glass', 'supplier', 'own'] },
      ],
      [],
      {
        label: 'list of tanks',
        added: [
          {
            kind: 'tank',
            record: {
              id: 'T20',
              label: 'T20',
              shape: 'cylinder',
              insideLengthMm: 304.8,
              insideHeightMm: 500,
              glassMm: 5,
              supplier: 'S-greavel',
              clientsOwn: true,
              note: '',
              typed: { insideLengthMm: '12 in' },
            },
          },
        ],
        updated: [{ kind: 'tank', from: t07, to: { ...t07, damHeightMm: 140 } }],
        removed: [],
      },
    ]);
  });

  test('a list that says what is there already changes nothing', () => {
    const read = importRecords('tank', 'code,shape,length,height\nT07,rectangle,900,600\n', records);
    expect([read.taken, read.change]).toEqual([
      [{ row: 2, code: 'T07', is: 'as it is', touches: [] }],
      emptyChange('list of tanks'),
    ]);
  });

  test('every refused row is named, and nothing is half taken in', () => {
    const rows = [
      'code,shape,length,height,dam,bow,supplier',
      'T20,rectangle,300,300,,,',
      'T21,rectangel,300,300,,,',
      'T22,rectangle,300 L,300,,,',
      'T23,rectangle,300,300,301,,',
      'T24,rectangle,300,300,,20,',
      'T25,rectangle,300,300,,,Greavel Pane Cuters',
      'T20,rectangle,300,300,,,',
      'M01,rectangle,300,300,,,',
      ',rectangle,300,300,,,',
      'T26,rectangle,300',
    ];
    const read = importRecords('tank', rows.join('\n'), records);
    expect([saidRows(read.refused), read.change]).toEqual([
      [
        { row: 3, says: 'T21: Shape: nothing called "rectangel". Did you mean rectangle?' },
        { row: 4, says: 'T22: Inside length is in mm, a length; "300 L" does not fit.' },
        { row: 5, says: 'T23: The dam is 301 mm and the tank only 300 mm high inside.' },
        { row: 6, says: 'T24: A rectangle has no front bow.' },
        {
          row: 7,
          says: 'T25: Supplier: nothing called "Greavel Pane Cuters". Did you mean Greavel Pane Cutters?',
        },
        { row: 8, says: 'T20 stands in the list twice.' },
        { row: 9, says: 'M01: That is the code of a material.' },
        { row: 10, says: 'The code is empty.' },
        { row: 11, says: 'Has 3 fields; the heading has 7.' },
      ],
      emptyChange('list of tanks'),
    ]);
  });

  test.each([
    ['code,shape,length\nT20,rectangle,300\n', 'The heading lacks height.'],
    [
      'code,shape,length,height,dpeth\nT20,rectangle,300,300,300\n',
      'The heading "dpeth" says nothing here. Did you mean depth?',
    ],
    ['code,shape,length,height\n', 'The file holds no tanks.'],
  ])('a list of another form is refused at its heading: %s', (text, says) => {
    expect(
      importRecords('tank', text, records).refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) })),
    ).toEqual([{ row: 1, says }]);
  });

  test('what an outside program made harmless is read as it was meant', () => {
    const read = importRecords('tank', "code,shape,length,height,note\nT20,rectangle,300,300,'=1+1\n", records);
    expect(read.change.added.map(({ record }) => 'note' in record && record.note)).toEqual(['=1+1']);
  });
});
