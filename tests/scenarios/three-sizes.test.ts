import { describe, expect, test } from 'vitest';
import { asPrinted, twoWays, type RunTold } from './two-ways.ts';

const materials = ['M01', 'M04', 'M05', 'M06', 'M07', 'M08', 'M09', 'M15'];
const sizes = ['T03', 'T07', 'T08'];
const order = { sizes, set: { soil_rise: '0 mm' }, materials };

/** Needed by T03, T07, T08 and together; each alone; together in packs and money; left in the store. */
const table: Readonly<Record<string, readonly string[]>> = {
  M01: ['6.244', '16.837', '34.053', '57.134', '60.90', '1x45 2x10', '51.10', '7.866'],
  M04: ['2.481', '4.824', '8.410', '15.715', '28.80', '3x6', '21.60', '2.285'],
  M05: ['4.447', '13.710', '27.530', '45.686', '32.20', '1x70', '24.50', '24.314'],
  M06: ['4.447', '13.710', '27.530', '45.686', '53.40', '1x50', '34.00', '4.314'],
  M07: ['2.964', '9.140', '18.353', '30.458', '81.00', '1x40', '54.00', '9.542'],
  M08: ['1.482', '4.570', '9.177', '15.229', '29.60', '1x20', '22.00', '4.771'],
  M09: ['1.482', '4.570', '9.177', '15.229', '27.60', '2x12', '18.40', '8.771'],
  M15: ['79.72', '161.24', '289.87', '530.84', '31.20', '1x500 1x100', '24.20', '69.16'],
};

describe.each(twoWays())('three sizes, one shopping run: T03, T07, T08 with H1, flat, by $way', ({ bench, run }) => {
  test('soil stands 60, 90 and 100 mm high', async () => {
    const columns = await bench({ sizes, set: order.set });
    expect(sizes.map((size) => columns[size]?.figures['soil_front'])).toEqual([60, 90, 100]);
  });

  test.each(Object.entries(table))('%s: needed %s', async (material, row) => {
    const alone = await Promise.all(sizes.map((size) => run({ ...order, sizes: [size] })));
    const whole = needOf(await run(order), material);
    const figures = [...alone.map((each) => needOf(each, material).used), whole.used];
    const needed = figures.map((figure, at) => figure.toFixed(row[at]?.split('.')[1]?.length));
    const left = whole.leftOver.toFixed(row[7]?.split('.')[1]?.length);
    expect([...needed, whole.aloneCost, whole.packs, whole.packsCost, left]).toEqual(row);
  });

  test('the clay of each size alone: 9.80 + 19.60 + 31.50', async () => {
    const alone = await Promise.all(sizes.map((size) => run({ ...order, sizes: [size], materials: ['M01'] })));
    expect(alone.map((each) => each.materials['M01']?.packsCost)).toEqual(['9.80', '19.60', '31.50']);
  });

  test('carriage alone: free from 90.00 of goods, the leaves never free', async () => {
    const alone = await Promise.all(sizes.map((size) => run({ ...order, sizes: [size] })));
    expect(alone.map(billsOf)).toEqual([
      { hollin: ['60.60', '7.50'], saltbarrow: ['5.20', '6.00'] },
      { hollin: ['97.40', '0.00'], saltbarrow: ['10.40', '6.00'] },
      { hollin: ['155.50', '0.00'], saltbarrow: ['15.60', '6.00'] },
    ]);
    const carriage = alone.flatMap((each) => Object.values(each.suppliers).map((bill) => Number(bill[1])));
    expect(sum(carriage)).toBeCloseTo(25.5, 9);
  });

  test('carriage together: 225.60 travels free, 24.20 of leaves for 6.00', async () => {
    expect(billsOf(await run(order))).toEqual({ hollin: ['225.60', '0.00'], saltbarrow: ['24.20', '6.00'] });
  });

  test('249.80 for 344.70, 255.80 landed for 370.20: saved 94.90 (27.5 %) and 114.40 (30.9 %)', async () => {
    const { sums } = await run(order);
    const [together, alone, landed, landedAlone] = sums.map(Number) as [number, number, number, number];
    expect(sums).toEqual(['249.80', '344.70', '255.80', '370.20']);
    const saved = { goods: alone - together, landed: landedAlone - landed };
    const shares = { goodsShare: (saved.goods / alone) * 100, landedShare: (saved.landed / landedAlone) * 100 };
    const printed = { goods: '94.90', landed: '114.40', goodsShare: '27.5', landedShare: '30.9' };
    expect(asPrinted({ ...saved, ...shares }, printed)).toEqual(printed);
  });

  test('40 L of fern ties with 4 x 8 L and keeps, so the larger pack is bought', async () => {
    const eights = await run({ ...order, sizes: ['T07'], materials: ['M07'] });
    expect([eights.materials['M07']?.packs, eights.materials['M07']?.packsCost]).toEqual(['2x8', '27.00']);
    expect((await run(order)).materials['M07']?.packsCost).toBe('54.00');
  });
});

function needOf({ materials: needs }: RunTold, material: string) {
  const need = needs[material];
  if (!need) throw new Error(`no ${material}`);
  return need;
}

function billsOf({ suppliers }: RunTold) {
  return {
    hollin: suppliers["Hollin Lane Growers' Supply"],
    saltbarrow: suppliers['Saltbarrow Bark and Timber'],
  };
}

function sum(figures: readonly number[]): number {
  return figures.reduce((total, each) => total + each, 0);
}
