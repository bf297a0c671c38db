import { describe, expect, test } from 'vitest';
import { daysToCount } from '#shared-calc/trade/cultures/days-to-count.ts';
import { growCount } from '#shared-calc/trade/cultures/grow-count.ts';
import { growthRate } from '#shared-calc/prepare/growth-rate.ts';
import { demoRecords } from '#tests/demo-bench.ts';

describe('logistic growth, OpenStax Calculus vol. 2, section 4.4 (deer)', () => {
  test('900,000 deer on room for 1,072,764 are 978,830 after three years, within a head', () => {
    expect(Math.abs(Number(growCount.compute([900_000, 39_732 * 27, 0.2311, 3])) - 978_830)).toBeLessThan(1);
  });

  test('the turning point is half the room', () => {
    const [start, room, rate] = [100, 20_000, 0.07];
    const turn = Number(daysToCount.compute([start, room / 2, room, rate]));
    const gain = (day: number) =>
      Number(growCount.compute([start, room, rate, day + 0.5])) -
      Number(growCount.compute([start, room, rate, day - 0.5]));
    expect(gain(turn)).toBeGreaterThan(Math.max(gain(turn - 1), gain(turn + 1)));
  });
});

describe('Euler-Lotka: the rate at which survivors times young, discounted by age, add up to one', () => {
  // Birch 1948, J. Anim. Ecol. 17:15-26, rice weevil at 29 degC, by weeks
  const weevil = table(
    Array.from({ length: 15 }, (_, week) => 4.5 + week),
    [0.87, 0.83, 0.81, 0.8, 0.79, 0.77, 0.74, 0.66, 0.59, 0.52, 0.45, 0.36, 0.29, 0.25, 0.19],
    [20, 23, 15, 12.5, 12.5, 14, 12.5, 14.5, 11, 9.5, 2.5, 2.5, 2.5, 4, 1],
  );
  // small table of a mathematics forum
  const small = table([0, 1, 2, 3, 4, 5], [1, 0.98, 0.95, 0.5, 0.3, 0], [0, 0, 0, 3, 4, 0]);

  test('the rice weevil: 113.485 young a life, 0.76198 a week, 6.210 weeks a generation', () => {
    const young = youngOfALife(weevil);
    const rate = rateOf(weevil);
    expect(young).toBeCloseTo(113.485, 3);
    expect(Math.abs(young / 113.56 - 1)).toBeLessThan(1e-3); // as published
    expect(rate).toBeCloseTo(0.76198, 5);
    expect(Math.abs(rate - 0.762)).toBeLessThan(1e-3); // as published
    expect(Math.log(young) / rate).toBeCloseTo(6.21, 3);
    expect(Math.exp(rate)).toBeCloseTo(2.14, 2);
  });

  test('the short cut over the mean age of mothers (8.30 weeks) would be badly wrong', () => {
    const meanAge = weevil.reduce((sum, { age, alive, young }) => sum + age * alive * young, 0) / youngOfALife(weevil);
    expect(meanAge).toBeCloseTo(8.3, 2);
    expect(Math.log(youngOfALife(weevil)) / meanAge).toBeLessThan(0.76198 * 0.8);
  });

  test('the small table: 2.7 young a life, rate 0.291363, factor 1.338251', () => {
    expect([youngOfALife(small), rateOf(small), Math.exp(rateOf(small))]).toEqual([
      expect.closeTo(2.7, 9),
      expect.closeTo(0.291363, 6),
      expect.closeTo(1.338251, 6),
    ]);
  });
});

describe('springtail growth, OECD TG 232 (2009): 10 juveniles, at least 100 young in 28 days', () => {
  // worked from the control's floor; room taken so wide that it does not slow
  test.each([
    { end: 110, rate: 0.0856, doubles: 8.09 },
    { end: 100, rate: 0.0822, doubles: 8.43 },
  ])('10 to $end is $rate a day, doubling in $doubles d', ({ end, rate, doubles }) => {
    const exact = Math.log(end / 10) / 28;
    expect([exact, Math.LN2 / exact]).toEqual([expect.closeTo(rate, 4), expect.closeTo(doubles, 2)]);
    expect(Number(growCount.compute([10, 1e12, exact, 28]))).toBeCloseTo(end, 4);
  });

  // Fountain and Hopkin 2005, Annu. Rev. Entomol. 50:201-222: 30-50 eggs, mature at 21-24 d and hatching in 7-10 d
  test('a first brood of 40 in 31 days bounds it at 0.119 a day', () => {
    expect(Math.log(40) / 31).toBeCloseTo(0.119, 3);
  });
});

describe('growth of cultures at other temperatures', () => {
  const kinds = [...demoRecords().cultureKind.values()];
  const grown = kinds.filter(({ ratePerDay }) => ratePerDay !== undefined);

  // OECD TG 232 (2009), published: the control of a valid test grows by 0.0822 a day or more, from juveniles alone.
  test('no springtail of the culture book is planned faster than the control of OECD TG 232', () => {
    const springtails = grown.filter(({ taken }) => taken === 'floated');
    expect(springtails.length).toBeGreaterThan(0);
    for (const { ratePerDay = 1 } of springtails) expect(ratePerDay).toBeLessThanOrEqual(0.0822);
  });

  // Fountain and Hopkin 2005, Annu. Rev. Entomol. 50:201-222, published: eggs fail over 28 degC.
  test('no kind is planned warmer than its eggs stand', () => {
    for (const { highestC } of grown) expect(highestC).toBeLessThanOrEqual(28);
  });

  // Horvathova et al., ZooKeys, published: growth in the pouch of a woodlouse almost three times slower at 15 than at
  // 22 degC. Ours, from memory, is 2 for 10 degrees, said with 1.5 to 3: it would not reach that.
  test('a cool tub of isopods may grow slower than the range says: below its band it is counted, not worked', () => {
    const published = 3 ** (10 / 7);
    expect(published).toBeGreaterThan(3);
    const isopods = grown.filter(({ label }) => /isopod/i.test(label));
    expect(isopods.length).toBeGreaterThan(0);
    for (const kind of isopods) {
      expect(growthRate(kind, 15)).toBeUndefined();
      const cool = growthRate(kind, kind.lowestC);
      expect(cool && cool.perDay / cool.from).toBeGreaterThan(1);
    }
  });
});

interface Age {
  readonly age: number;
  readonly alive: number;
  readonly young: number;
}

function table(ages: readonly number[], alive: readonly number[], young: readonly number[]): readonly Age[] {
  return ages.map((age, at) => ({ age, alive: alive[at] ?? 0, young: young[at] ?? 0 }));
}

function youngOfALife(ages: readonly Age[]): number {
  return ages.reduce((sum, { alive, young }) => sum + alive * young, 0);
}

/** By bisection: the sum only falls as the rate rises. */
function rateOf(ages: readonly Age[]): number {
  const sumAt = (rate: number) =>
    ages.reduce((sum, { age, alive, young }) => sum + alive * young * Math.exp(-rate * age), 0);
  let [low, high] = [-2, 5];
  for (let cut = 0; cut < 100; cut += 1) {
    const middle = (low + high) / 2;
    if (sumAt(middle) > 1) low = middle;
    else high = middle;
  }
  return low;
}
