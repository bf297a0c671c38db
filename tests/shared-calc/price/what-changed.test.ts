import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quoteSums, type QuoteFigures, type QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { whatChanged } from '#shared-calc/price/what-changed.ts';
import { costsOfT05, demoRules, minutesOfT05 } from './demo-rules.ts';

describe('whatChanged', () => {
  test('tells the client larger tank from our hour and the dearer clay, one after the other', () => {
    const client = { tank: 21_400 };
    const steps = {
      old: sumsOf({}),
      client: sumsOf(client),
      us: sumsOf(client, minutesOfT05 + 60),
      supplier: sumsOf({ ...client, tank: 22_000, media: 4800 }, minutesOfT05 + 60),
    };
    expect(whatChanged(steps)).toEqual({
      lines: [
        { group: 'tank', label: 'tank', from: 21_143, to: 30_571, by: 'client' },
        { group: 'work', label: 'work', from: 58_767, to: 64_500, by: 'us' },
        { group: 'tank', label: 'tank', from: 30_571, to: 31_429, by: 'supplier' },
        { group: 'media', label: 'media', from: 7815, to: 8000, by: 'supplier' },
      ],
      net: { client: 9428, supplier: 1043, us: 5733 },
      sum: 16_204,
    });
  });

  test('nothing changed says so', () => {
    const same = sumsOf({});
    expect(whatChanged({ old: same, client: same, us: same, supplier: same })).toEqual({
      lines: [],
      net: { client: 0, supplier: 0, us: 0 },
      sum: 0,
    });
  });

  test('a line that falls away goes to nothing, a new one comes from it', () => {
    const old = sumsOf({}, minutesOfT05, [{ label: 'Ramp', group: 'hardscape', costCoins: 600 }]);
    const now = sumsOf({ mist: 0 });
    expect(whatChanged({ old, client: now, us: now, supplier: now }).lines).toEqual([
      { group: 'mist', label: 'mist', from: 8286, to: 0, by: 'client' },
      { group: 'hardscape', label: 'Ramp', from: 1000, to: 0, by: 'client' },
    ]);
  });

  test('the lines, and the shares of client, us and supplier, make up the whole difference', () => {
    fc.assert(
      fc.property(someSums, someSums, someSums, someSums, (old, client, us, supplier) => {
        const changed = whatChanged({ old, client, us, supplier });
        const whole = supplier.netCoins - old.netCoins;
        expect(changed.sum).toBe(whole);
        expect(changed.net.client + changed.net.us + changed.net.supplier).toBe(whole);
        expect(changed.lines.reduce((sum, line) => sum + line.to - line.from, 0)).toBe(whole);
      }),
    );
  });
});

const someSums = fc
  .tuple(
    fc.dictionary(fc.constantFrom(...costsOfT05.keys()), fc.nat({ max: 50_000 })),
    fc.integer({ min: 0, max: 900 }),
  )
  .map(([costs, minutes]) => sumsOf(costs, minutes));

function sumsOf(
  costs: Readonly<Record<string, number>>,
  minutes: number = minutesOfT05,
  oneOffs: NonNullable<QuoteFigures['oneOffs']> = [],
): QuoteSums {
  const groupCosts = new Map([...costsOfT05, ...Object.entries(costs)]);
  const quote = quoteSums({ groupCosts, minutes, oneOffs }, demoRules);
  if (!quote.ok) throw new Error(JSON.stringify(quote.fault));
  return quote.value.sums;
}
