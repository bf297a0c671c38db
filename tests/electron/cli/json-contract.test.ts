import { placeUses } from '#shared-calc/jobs/place-checks.ts';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { demoRecords } from '#tests/demo-bench.ts';
import { Bench, type Need, Needs, Quote, Run, Work } from './answers.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const { book } = useDemoBook();
const records = demoRecords();
const lines = [...records.line.values()].filter((line) => line.recipe === 'H1');

async function bench(...argv: readonly string[]) {
  return Bench.parse(await lwJson('bench', ...argv, '--book', book()));
}

describe('work --json', () => {
  test.each([
    ['layer_volume(0.4005 m2, 40 mm)', 16.02, 'L', 'volume'],
    ['tank_floor_area("rectangle", 900 mm, 445 mm, 0 mm, 0 mm)', 0.4005, 'm2', 'area'],
    ['round_to(40.5 mm, 5 mm)', 40, 'mm', 'length'],
    ['500 g * 2', 1, 'kg', 'mass'],
    ['98.6 degF', 37, 'degC', 'temperature'],
    ['24 degC - 21 degC', 3, 'K', 'temperature step'],
    ['15 psi', 103.4214, 'kPa', 'pressure'],
    ['1 h', 60, 'min', 'time'],
    ['cover_panes(900 mm, 600 mm)', 2, 'each', 'count'],
    ['2 + 3', 5, 'number', 'number'],
    ['5.6 %', 5.6, '%', 'share'],
    ['"full"', 'full', 'choice', 'choice'],
    ['3 L > 2 L', true, 'yes_no', 'yes_no'],
    ['mist_daily(2, 90 mL/min, 550 kPa, 550 kPa, 15 s, 3 each/d)', 135, 'mL/d', 'flow'],
  ])('%s is %s %s', async (rule, value, unit, kind) => {
    const told = Work.parse(await lwJson('work', rule));
    const { working, warnings, cautions: _, ...answer } = told;
    const rounded = typeof told.value === 'number' ? Number(told.value.toFixed(4)) : told.value;
    expect({ ...answer, value: rounded }).toEqual({ value, unit, kind });
    expect([working.length > 0, warnings]).toEqual([true, []]);
  });

  test('figures come unrounded, free of binary noise', async () => {
    expect(await lwJson('work', '0.1 L + 0.2 L')).toMatchObject({ value: 0.3 });
    expect(await lwJson('work', '10 L / 3')).toMatchObject({ value: 3.333333333333 });
  });
});

describe('bench --json', () => {
  test('every line and check of the recipe, in its stated unit and its order', async () => {
    const { recipe, columns } = await bench('--sizes', 'T07,T03x2');
    expect([recipe, columns.map(({ size, tank, count }) => [size, tank, count])]).toEqual([
      'H1',
      [
        ['T07', 'T07', 1],
        ['T03', 'T03', 2],
      ],
    ]);
    const told = columns.map((column) => Object.entries(column.lines).map(([name, { unit }]) => [name, unit]));
    const house = lines.map(({ name, unit }) => [name, unit]);
    expect(told).toEqual([house, house]);
    // A check that a range says better is not asked while there is one.
    const asked = lines.filter(({ role, unlessRanged }) => role === 'check' && unlessRanged === undefined);
    const checks = asked.map((line) => line.name);
    const here = [...checks, ...placeUses];
    const named = columns.map((column) => column.checks.map((check) => ('use' in check ? check.use : check.line)));
    expect(named).toEqual([here, here]);
  });

  test('shares are in per cent, words and answers stand as they are', async () => {
    const { columns } = await bench(
      '--sizes',
      'T07',
      '--lines',
      'drainage_settle,kit,public_site,room_summer,coir_parts',
    );
    const shown = Object.entries(columns[0]?.lines ?? {}).map(([name, { value, unit }]) => [name, value, unit]);
    expect(shown).toEqual([
      ['room_summer', 23, 'degC'],
      ['public_site', false, 'yes_no'],
      ['kit', 'full', 'choice'],
      ['drainage_settle', 2, '%'],
      ['coir_parts', 3, 'number'],
    ]);
  });

  test('where the house has a figure from, but not of one that was typed over it', async () => {
    const { columns } = await bench(
      '--sizes',
      'T07',
      '--lines',
      'lift_limit,litter_density,floor_area,litter',
      '--set',
      'litter=40 mm',
    );
    expect(Object.entries(columns[0]?.lines ?? {}).map(([name, { source }]) => [name, source])).toEqual([
      ['floor_area', undefined],
      ['litter', undefined],
      [
        'litter_density',
        { from: 'published', note: 'Ottmar and Andreu 2007, hardwood litter, frames.gov/catalog/25244' },
      ],
      ['lift_limit', { from: 'memory', note: 'guide figure at knuckle height, close to the body' }],
    ]);
  });

  test('where a value comes from, or why there is none', async () => {
    const { columns } = await bench(
      '--sizes',
      'T07,T07',
      '--lines',
      'litter,dam_height,drainage,capping,soil_front',
      '--set',
      'litter=500',
      '--set',
      'T07#2.dam_height=',
      '--set',
      'T07#2.capping=6 mm',
    );
    const states = columns.map((column) =>
      Object.entries(column.lines).map(([name, box]) => [name, box.value, box.state, box.flags]),
    );
    expect(columns.map(({ size, tank }) => [size, tank])).toEqual([
      ['T07', 'T07'],
      ['T07#2', 'T07'],
    ]);
    expect(states).toEqual([
      [
        ['dam_height', 150, 'house', []],
        ['drainage', 40, 'house', []],
        ['capping', 10, 'house', []],
        ['soil_front', 90, 'house', []],
        ['litter', 500, 'job', ['out of range']],
      ],
      [
        ['dam_height', null, 'needs a figure', []],
        ['drainage', null, 'waiting', []],
        ['capping', 6, 'local', []],
        ['soil_front', null, 'waiting', []],
        ['litter', 500, 'job', ['out of range']],
      ],
    ]);
  });

  test('a size without its figures has sums that are at least so much, and says why; its checks are not known yet', async () => {
    const { columns } = await bench('--sizes', 'T07', '--set', 'T07.dam_height=');
    const [column] = columns;
    expect(column).toMatchObject({
      sums: { atLeast: true, missing: [{ what: 'measure', of: 'T07', label: 'T07, dam' }] },
    });
    const holds = Object.fromEntries(
      (column?.checks ?? []).map((check) => ['use' in check ? check.use : check.line, check.holds]),
    );
    expect([holds['stack_fits'], holds['air_open'], holds['shelf_holds']]).toEqual([null, true, null]);
  });

  test('sums are those of a quote for that size alone, all its builds', async () => {
    const [{ columns }, quote] = await Promise.all([
      bench('--sizes', 'T03,T07x2', '--lines', 'litter'),
      lwJson('quote', '--sizes', 'T07x2', '--book', book()),
    ]);
    const { cost, net, gross, deposit, hours } = Quote.parse(quote);
    expect(columns[1]).toMatchObject({ sums: { cost, net, gross, deposit, hours } });
  });

  test('a need whose price is older than the workshop lets pass is flagged, and is still priced', async () => {
    const { columns } = await bench(
      '--sizes',
      'T07',
      '--on',
      '2090-01-01',
      '--lines',
      'litter,leaves_need,tank_need,lamp_300_need',
    );
    const flags = Object.entries(columns[0]?.lines ?? {}).map(([name, box]) => [name, box.flags]);
    expect(Object.fromEntries(flags)).toEqual({
      tank_need: ['old price'],
      litter: [],
      leaves_need: ['old price'],
      lamp_300_need: [],
    });
    expect(columns[0]?.sums).not.toBeNull();
  });

  test('figures are unrounded', async () => {
    const { columns } = await bench('--sizes', 'T07', '--set', 'soil_rise=0 mm', '--lines', 'drainage_need,vent_share');
    expect(columns[0]?.lines).toMatchObject({
      drainage_need: { value: 16.83734693878 },
      vent_share: { value: 5.61797752809 },
    });
  });
});

describe('needs --json', () => {
  test('a row a material in the unit it is sold in; what needs nothing is left out', async () => {
    const { needs } = Needs.parse(await lwJson('needs', '--sizes', 'T07', '--book', book()));
    expect(needs.find(({ material }) => material === 'M01')).toMatchObject({
      label: 'Expanded clay 8-16 mm',
      group: 'media',
      unit: 'L',
      onHand: 0,
      packs: [{ size: 10, unit: 'L', count: 2, each: '9.80' }],
      cost: '16.50',
      packsCost: '19.60',
    });
    expect(needs.filter(({ used }) => used <= 0)).toEqual([]);
    expect(needs.map(({ material }) => material)).not.toContain('M27-300');
    expect(needs.map(({ material }) => material)).toContain('T07');
  });

  test('totals are the sums of the rows, and of those asked for alone', async () => {
    const all = Needs.parse(await lwJson('needs', '--sizes', 'T07,T03', '--book', book()));
    const some = Needs.parse(await lwJson('needs', '--sizes', 'T07,T03', '--materials', 'M01,M04', '--book', book()));
    for (const { needs, total, packsTotal } of [all, some]) {
      const sum = (pick: (need: z.infer<typeof Need>) => string) =>
        needs.reduce((coins, need) => coins + Math.round(Number(pick(need)) * 100), 0);
      expect([sum((need) => need.cost), sum((need) => need.packsCost)]).toEqual(
        [total, packsTotal].map((text) => Math.round(Number(text) * 100)),
      );
    }
    expect(some.needs.map(({ material }) => material)).toEqual(['M01', 'M04']);
  });
});

describe('run --json', () => {
  test('materials as needs, with what each alone would cost, and a bill a supplier', async () => {
    const run = Run.parse(await lwJson('run', '--sizes', 'T03,T07,T08', '--book', book()));
    const sum = (texts: readonly string[]) =>
      texts.reduce((coins, text) => coins + Math.round(Number(text) * 100), 0) / 100;
    expect(sum(run.materials.map(({ cost }) => cost)).toFixed(2)).toBe(run.together);
    expect(sum(run.materials.map(({ aloneCost }) => aloneCost)).toFixed(2)).toBe(run.alone);
    expect(sum(run.suppliers.map(({ goods }) => goods)).toFixed(2)).toBe(run.together);
    expect(sum([run.together, ...run.suppliers.map(({ carriage }) => carriage)]).toFixed(2)).toBe(run.landedTogether);
  });

  test('an order under the supplier\u2019s least is told by how much', async () => {
    const run = Run.parse(await lwJson('run', '--sizes', 'T03', '--materials', 'PG,PM', '--book', book()));
    const plants = run.suppliers.find(({ supplier }) => supplier === 'Marlvale Plant House');
    expect(Number(plants?.shortOfMinimum)).toBeCloseTo(40 - Number(plants?.goods), 9);
  });
});

describe('quote --json', () => {
  test('a line a group, tax on each class, and what they come to', async () => {
    const quote = Quote.parse(await lwJson('quote', '--sizes', 'T07', '--book', book()));
    expect(quote.lines.map(({ group }) => group)).toEqual([
      'tank',
      'media',
      'hardscape',
      'cover',
      'lamps',
      'mist',
      'plants',
      'microfauna',
      'work',
    ]);
    expect(Object.keys(quote.tax)).toEqual(['standard', 'low']);
    const tax = Object.values(quote.tax).reduce((sum, text) => sum + Number(text), 0);
    expect((Number(quote.net) + tax).toFixed(2)).toBe(quote.gross);
  });

  test('by packs, whole packs are the cost', async () => {
    const [used, packs] = await Promise.all(
      ['used', 'packs'].map(async (basis) =>
        Quote.parse(await lwJson('quote', '--sizes', 'T07', '--basis', basis, '--book', book())),
      ),
    );
    const { total, packsTotal } = Needs.parse(await lwJson('needs', '--sizes', 'T07', '--book', book()));
    const goods = (quote: z.infer<typeof Quote> | undefined) =>
      quote?.lines
        .filter(({ group }) => group !== 'work')
        .reduce((sum, { cost }) => sum + Number(cost), 0)
        .toFixed(2);
    expect([goods(used), goods(packs)]).toEqual([total, packsTotal]);
  });
});

describe('--json', () => {
  test.each([
    ['work', ['work', '2 + 3']],
    ['bench', ['bench', '--sizes', 'T07']],
    ['needs', ['needs', '--sizes', 'T07']],
    ['run', ['run', '--sizes', 'T07']],
    ['quote', ['quote', '--sizes', 'T07']],
    ['functions', ['functions']],
    ['book check', ['book', 'check']],
  ])('of %s is one line with one value', async (_, argv) => {
    const { code, out, err } = await lw(
      ...argv,
      '--json',
      ...(argv[0] === 'work' || argv[0] === 'functions' ? [] : ['--book', book()]),
    );
    expect([code, err, out.split('\n').length]).toEqual([0, '', 2]);
  });

  test('of what is refused is the kind of fault and its sentence', async () => {
    const { code, out } = await lw('needs', '--sizes', 'T7', '--json', '--book', book());
    const says = 'No tank called T7 in the tank book. Did you mean T07?';
    expect([code, JSON.parse(out)]).toEqual([1, { fault: { kind: 'refused', says } }]);
  });
});
