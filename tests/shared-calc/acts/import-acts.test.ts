import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const prices = 'material,pack,unit,price,from\nM01,10,L,10.20,2027-05-01\nM01,45,L,33.00,2027-05-01';

describe('takeInList', () => {
  test('a price list goes in as one step, called by its file', () => {
    const { label, records } = done(demo, 'takeInList', { list: 'prices', csv: prices, file: 'spring.csv' });
    expect([label, records.packPrice.size - demo.packPrice.size]).toEqual(['2 prices of a price list, spring.csv', 2]);
  });

  test('tanks, materials and suppliers come in by their codes', () => {
    const tanks = done(demo, 'takeInList', {
      list: 'tanks',
      csv: 'code,shape,length,depth,height\nT60,rectangle,600,450,450',
    });
    const goods = done(demo, 'takeInList', { list: 'materials', csv: 'material,label,unit\nM60,Fern fibre,L' });
    const sellers = done(demo, 'takeInList', { list: 'suppliers', csv: 'supplier,name,lead\nS-fern,Fern House,4' });
    expect([
      tanks.records.tank.get('T60')?.insideLengthMm,
      goods.records.material.get('M60')?.label,
      sellers.records.supplier.get('S-fern')?.leadDays,
    ]).toEqual([600, 'Fern fibre', 4]);
  });

  test('one row that cannot be read keeps the whole list out', () => {
    const says = refused(demo, 'takeInList', { list: 'prices', csv: `${prices}\nM99,1,L,1,2027-05-01` });
    expect(says).toMatch(/^Row 4: .*M99.* Nothing was taken in\.$/);
  });
});
