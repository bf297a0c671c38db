import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { isOldPrice, priceOn } from '#shared-calc/buy/pack-prices.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
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
