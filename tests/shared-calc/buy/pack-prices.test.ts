import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { isOldPrice, newPack, priceOn, putPrice } from '#renderer/books/price-now.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const context = derive(records, demoDay);
const price = { id: 'M04-6@start', pack: 'M04-6', from: '2027-03-01', priceCoins: 720 };

describe('priceOn', () => {
  test('the price of a day is the latest from that day or before', () => {
    const later = { ...price, id: 'later', from: '2027-04-01', priceCoins: 750 };
    const both = { packPrice: new Map([price, later].map((each) => [each.id, each])) };
    expect(
      ['2027-02-28', '2027-03-01', '2027-03-31', '2027-04-01'].map((day) => priceOn(both, 'M04-6', day)?.priceCoins),
    ).toEqual([undefined, 720, 720, 750]);
  });
});

describe('isOldPrice', () => {
  test('is one that has stood for more days than the workshop lets pass', () => {
    expect(['2027-08-28', '2027-08-29'].map((today) => isOldPrice(price, derive(records, today)))).toEqual([
      false,
      true,
    ]);
  });
});

describe('putPrice', () => {
  test('a pack that the book has not yet comes with its price', () => {
    const pack = { id: 'M04-20', material: 'M04', amount: 20 };
    expect(putPrice(context, { pack, from: '2027-05-01', priceCoins: 1900 })).toEqual(
      ok({
        ...emptyChange('M04 pack of 20 at 19.00 from 2027-05-01'),
        added: [
          { kind: 'pack', record: pack },
          {
            kind: 'packPrice',
            record: { id: 'M04-20@2027-05-01', pack: 'M04-20', from: '2027-05-01', priceCoins: 1900 },
          },
        ],
      }),
    );
  });
});

describe('newPack', () => {
  test('no material has two packs of one amount', () => {
    expect([newPack(records, 'M04', 6), newPack(records, 'M04', 20)]).toEqual([
      failed('M04 has such a pack already.'),
      ok({ id: 'M04-20', material: 'M04', amount: 20 }),
    ]);
  });
});
