import { describe, expect, test } from 'vitest';
import { goodsStock } from '#shared-calc/prepare/goods-stock.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';

describe('goodsStock', () => {
  const standing = done(demoRecords(), 'startTub', { kind: 'C1', founders: 1250, on: '2027-01-08' }).records;

  test('a tub gives portions of springtail seed: what may be taken of it, of what stands in it', () => {
    // 1,250 grow to 13,594.5 in 60 days, of which half may be taken; a portion is 2,000.
    const { onHand, free } = goodsStock(standing, 'SP', { asked: '2027-03-09' });
    expect([onHand.toFixed(3), free.toFixed(3)]).toEqual(['6.797', '3.399']);
  });

  test('a tub that is kept for a job gives to that job alone, and nothing before its first harvest', () => {
    const claimed = done(standing, 'changeTub', { tub: 'K1', fields: { claimedBy: 'J01' } }).records;
    const now = goodsStock(claimed, 'SP', { asked: '2027-03-09' });
    expect([now.free, now.kept.get('J01')?.toFixed(3)]).toEqual([0, '3.399']);
    expect(goodsStock(standing, 'SP', { asked: '2027-01-10' }).free).toBe(0);
  });

  test('isopods are no springtails', () => {
    expect(goodsStock(standing, 'IS', { asked: '2027-03-09' }).onHand).toBe(0);
  });
});
