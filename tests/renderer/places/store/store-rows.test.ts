import { describe, expect, test } from 'vitest';
import { bestBeforeOf, clearOn, isUnderLeast, keptOf, pastBest } from '#renderer/places/store/store-rows.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { storeGoods } from '#shared-calc/derive/store-goods.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { emptyStore, withBags } from '#tests/shared-calc/buy/lots.ts';

const today = '2027-03-10';

function rowsOf(records = demoRecords()) {
  return storeGoods(derive(records, today));
}

describe('the rows of the Store', () => {
  test('goods say what is on hand, free, kept, in quarantine and past its best', () => {
    const records = withBags(emptyStore(demoRecords()), [
      { id: 'K1', of: 'M26', amount: 100 },
      { id: 'K2', of: 'M26', amount: 40, sealed: false, bestBefore: '2027-06-01' },
      { id: 'K3', of: 'M26', amount: 100, job: 'J01' },
      { id: 'K4', of: 'M26', amount: 20, until: '2027-04-09' },
      { id: 'K5', of: 'M26', amount: 10, bestBefore: '2027-03-09' },
    ]);
    const [row] = rowsOf(records);
    if (!row) throw new Error('no row');
    const { onHand, free, quarantined, kept } = row.now;
    expect([row.of, row.label, row.unit]).toEqual(['M26', 'Microbial inoculant powder', 'g']);
    expect([onHand, free, quarantined, [...kept]]).toEqual([270, 140, 20, [['J01', 100]]]);
    expect([clearOn(row), bestBeforeOf(row), pastBest(row, today)]).toEqual(['2027-04-09', '2027-03-09', 10]);
  });

  test('plants that stand apart are kept for their job all the same', () => {
    const records = withBags(emptyStore(demoRecords()), [{ of: 'P04', amount: 6, until: '2027-04-09', job: 'J01' }]);
    const [row] = rowsOf(records);
    expect(row && [[...row.now.kept], [...keptOf(row)]]).toEqual([[], [['J01', 6]]]);
  });

  test('they stand in order of their codes, tanks and plants among them', () => {
    const records = withBags(demoRecords(), [
      { of: 'T05', amount: 1 },
      { of: 'P04', amount: 6 },
    ]);
    expect(rowsOf(records).map(({ of }) => of)).toEqual([
      'M01',
      'M05',
      'M08',
      'M15',
      'M18',
      'M24',
      'M28',
      'M30',
      'P04',
      'T05',
    ]);
  });

  test('a material with a least level has a row though nothing lies there, and is under it', () => {
    const records = demoRecords();
    const leaves = records.material.get('M16');
    if (!leaves) throw new Error('no leaves');
    const levelled = { ...records, material: new Map(records.material).set('M16', { ...leaves, least: 100 }) };
    const row = rowsOf(levelled).find(({ of }) => of === 'M16');
    expect(row && [row.now.onHand, isUnderLeast(row)]).toEqual([0, true]);
  });
});
