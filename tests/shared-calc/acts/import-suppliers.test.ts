import { describe, expect, test } from 'vitest';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();

function saidRows(refused: ReturnType<typeof importRecords>['refused']) {
  return refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) }));
}
const hollin = records.supplier.get('S-hollin');

describe('importRecords, suppliers', () => {
  test('carriage, minimum and days are read as they are written', () => {
    const read = importRecords(
      'supplier',
      'supplier,name,lead,carriage,free from,minimum,days\nS-hollin,,,8.00,,,\nS-new,New Moss,3,7.50,90,40.00,Tue-Thu\n',
      records,
    );
    expect([saidRows(read.refused), read.change.added, read.change.updated]).toEqual([
      [],
      [
        {
          kind: 'supplier',
          record: {
            id: 'S-new',
            name: 'New Moss',
            sells: '',
            leadDays: 3,
            carriageCoins: 750,
            freeFromCoins: 9000,
            minimumCoins: 4000,
            deliveryWeekdays: [2, 3, 4],
            note: '',
          },
        },
      ],
      [{ kind: 'supplier', from: hollin, to: { ...hollin, carriageCoins: 800 } }],
    ]);
  });

  test('every refused row is named', () => {
    const read = importRecords(
      'supplier',
      'supplier,name,lead,carriage,days\nS-a,,3,,\nS-b,B,3.5,,\nS-c,C,3,7.505,\nS-d,D,3,,Noday\n',
      records,
    );
    expect(saidRows(read.refused)).toEqual([
      { row: 2, says: 'S-a: the name is empty.' },
      { row: 3, says: 'S-b: Lead is a whole number; 3.5 is not.' },
      { row: 4, says: 'S-c: Carriage: "7.505" has a fraction of a coin.' },
      { row: 5, says: 'S-d: Comes on: "Noday" is no day of the week; write Mon Tue Wed Thu Fri Sat Sun, or Mon-Fri.' },
    ]);
  });
});
