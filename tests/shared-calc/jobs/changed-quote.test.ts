import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import type { WhatChanged } from '#shared-calc/price/what-changed.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, issued, libraryJob, valueOf, withRecords, written } from './demo-jobs.ts';

type Edit = (records: Records) => Records;

/** The changes between the library's first quote and the one after these edits. */
function changedBy(edit: Edit, before: Edit = (records) => records): WhatChanged {
  const first = issued(before(libraryJob()), 'A');
  const next = issued(edit(first.records), 'B');
  return valueOf(changedQuote(first.body, next.body));
}

describe('changedQuote', () => {
  test('nothing changed: no line, no difference', () => {
    expect(changedBy((records) => records)).toEqual({ lines: [], net: { client: 0, supplier: 0, us: 0 }, sum: 0 });
  });

  test.each<[string, Edit, keyof WhatChanged['net']]>([
    ['a larger tank', (records) => after(records, setSizes(records, 'J02', [{ tank: 'T07', count: 1 }])), 'client'],
    ['a second build', (records) => after(records, setSizes(records, 'J02', [{ tank: 'T05', count: 2 }])), 'client'],
    ['the kit', (records) => written(records, 'client', { kit: 'show' }), 'client'],
    ['a one-off line asked for', (records) => oneOff(records, 'client'), 'client'],
    ['a local value of ours', (records) => written(records, 'us', { 'T05.drainage_waste': '9 %' }), 'us'],
    ['a one-off line of ours', (records) => oneOff(records, 'us'), 'us'],
    ['the house recipe', (records) => houseLine(records, { name: 'litter', text: '45 mm' }), 'us'],
    ['a margin', (records) => margin(records, 0.5), 'us'],
    ['a tank measured anew', (records) => measured(records, 140), 'us'],
    ['a price', (records) => price(records, 'T05-1', 20_000), 'supplier'],
  ])('%s is counted once, where it belongs', (_, edit, by) => {
    const { lines, net, sum } = changedBy(edit);
    expect(new Set(lines.map((line) => line.by))).toEqual(new Set([by]));
    expect({ ...net, [by]: 0 }).toEqual({ client: 0, us: 0, supplier: 0 });
    expect(net[by]).toBe(sum);
    expect(sum).not.toBe(0);
  });

  test('a larger tank is the client’s at the old price of that tank, its rise the supplier’s', () => {
    const larger: Edit = (records) => after(records, setSizes(records, 'J02', [{ tank: 'T07', count: 1 }]));
    const { lines, net } = changedBy((records) => price(larger(records), 'T07-1', 22_400));
    expect(lines.filter((line) => line.group === 'tank')).toEqual([
      // 148.00 and 214.00, then 224.00, each over 0.7.
      { group: 'tank', label: 'Tank', from: 21_143, to: 30_571, by: 'client' },
      { group: 'tank', label: 'Tank', from: 30_571, to: 32_000, by: 'supplier' },
    ]);
    expect(net.client).toBe(changedBy(larger).net.client);
  });

  test('what the client took back is the client’s, what we took back is ours', () => {
    const by = (who: 'client' | 'us') =>
      changedBy(
        (records) => withoutLocal(records, 'J02.litter'),
        (records) => written(records, who, { litter: '60 mm' }),
      ).net;
    expect([by('client').client, by('client').us]).toEqual([by('us').us, 0]);
  });

  test('a client’s rule over a line that we put in since waits for our step', () => {
    const { net, sum } = changedBy((records) => {
      const house = houseLine(records, { id: 'H1.leafy', name: 'leafy', text: '60 mm' });
      return written(house, 'client', { litter: 'leafy' });
    });
    expect(net).toEqual({ client: 0, us: sum, supplier: 0 });
    expect(sum).toBeGreaterThan(0);
  });

  test('the lines, and the three shares, add up to the whole difference, whoever did what', () => {
    const edits: Readonly<Record<string, Edit>> = {
      larger: (records) =>
        after(
          records,
          setSizes(records, 'J02', [
            { tank: 'T06', count: 1 },
            { tank: 'T05', count: 2 },
          ]),
        ),
      basic: (records) => written(records, 'client', { kit: 'basic' }),
      taller: (records) => written(records, 'us', { 'T05.litter': '50 mm' }),
      carved: (records) => oneOff(records, 'client'),
      house: (records) => houseLine(records, { name: 'mix_waste', text: '12 %' }),
      rate: (records) => withRecords(records, 'rate', [{ id: 'R-builder', label: 'Builder', coins: 3555, per: 'h' }]),
      margin: (records) => margin(records, 0.47),
      clay: (records) => price(records, 'M01-10', 1234),
      tank: (records) => price(records, 'T05-1', 15_501),
    };
    fc.assert(
      fc.property(fc.shuffledSubarray(Object.keys(edits)), fc.integer({ min: 0, max: 4 }), (names, split) => {
        const apply = (some: readonly string[]) => (records: Records) =>
          some.reduce((each, name) => edits[name]?.(each) ?? each, records);
        const first = issued(apply(names.slice(0, split))(libraryJob()), 'A');
        const next = issued(apply(names.slice(split))(first.records), 'B');
        const { lines, net, sum } = valueOf(changedQuote(first.body, next.body));
        expect(sum).toBe(next.body.sums.netCoins - first.body.sums.netCoins);
        expect(net.client + net.us + net.supplier).toBe(sum);
        expect(lines.reduce((all, line) => all + line.to - line.from, 0)).toBe(sum);
      }),
      { numRuns: 12 },
    );
  });
});

function oneOff(records: Records, by: 'client' | 'us'): Records {
  return withRecords(records, 'quoteLine', [
    { id: `Q-${by}`, job: 'J02', label: 'Carved name board', group: 'hardscape', costCoins: 2400, by },
  ]);
}

function houseLine(records: Records, change: Partial<Line> & Pick<Line, 'name'>): Records {
  const id = change.id ?? `H1.${change.name}`;
  const line = records.line.get(id) ?? records.line.get('H1.litter');
  if (!line) throw new Error('not the demo recipe');
  return withRecords(records, 'line', [{ ...line, ...change, id }]);
}

function margin(records: Records, share: number): Records {
  const media = records.margin.get('media');
  return media ? withRecords(records, 'margin', [{ ...media, share }]) : records;
}

function measured(records: Records, damHeightMm: number): Records {
  const tank = records.tank.get('T05');
  return tank ? withRecords(records, 'tank', [{ ...tank, damHeightMm }]) : records;
}

function price(records: Records, pack: string, priceCoins: number): Records {
  return withRecords(records, 'packPrice', [{ id: `${pack}@new`, pack, from: DEMO_DAY, priceCoins }]);
}

function withoutLocal(records: Records, id: string): Records {
  return { ...records, localValue: new Map([...records.localValue].filter(([each]) => each !== id)) };
}
