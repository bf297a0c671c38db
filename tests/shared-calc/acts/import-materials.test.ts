import { describe, expect, test } from 'vitest';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();

function saidRows(refused: ReturnType<typeof importRecords>['refused']) {
  return refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) }));
}
const m01 = records.material.get('M01');

describe('importRecords, materials', () => {
  test('a material comes with the packs it has not yet', () => {
    const read = importRecords(
      'material',
      'material,label,unit,packs,sale,keeps,lead\nM01,,,10 L; 1 gal,,,4\nM40,Rice hulls,L,20; 80,packs,no,\n',
      records,
    );
    expect([
      read.taken.map(({ code, is, touches }) => [code, is, touches]),
      read.change.added,
      read.change.updated,
    ]).toEqual([
      [
        ['M01', 'changed', ['lead']],
        ['M40', 'new', ['label', 'unit', 'sale', 'keeps']],
      ],
      [
        { kind: 'pack', record: { id: 'M01-3.785411784', material: 'M01', amount: 3.785411784, supplier: 'S-hollin' } },
        {
          kind: 'material',
          record: { id: 'M40', label: 'Rice hulls', unit: 'L', sale: 'packs', keeps: false, note: '' },
        },
        { kind: 'pack', record: { id: 'M40-20', material: 'M40', amount: 20 } },
        { kind: 'pack', record: { id: 'M40-80', material: 'M40', amount: 80 } },
      ],
      [{ kind: 'material', from: m01, to: { ...m01, leadDays: 4 } }],
    ]);
  });

  test('every refused row is named, and nothing is half taken in', () => {
    const rows = [
      'material,label,unit,packs',
      'M40,Rice hulls,L,20 kg',
      'M41,Rice hulls,litre,',
      'M42,,L,',
      'M01,,kg,',
      'T07,Rice hulls,L,',
    ];
    const read = importRecords('material', rows.join('\n'), records);
    expect([saidRows(read.refused), read.change]).toEqual([
      [
        { row: 2, says: 'M40: Pack is in L, a volume; "20 kg" does not fit.' },
        { row: 3, says: 'M41: Unit: nothing called "litre".' },
        { row: 4, says: 'M42: the label is empty.' },
        {
          row: 5,
          says: 'M01: Its packs or stock are counted in L, which would no longer be right. Make another material of it.',
        },
        { row: 6, says: 'T07: That is the code of a tank.' },
      ],
      emptyChange('list of materials'),
    ]);
  });
});
