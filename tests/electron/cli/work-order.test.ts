import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readArguments } from '#electron/cli/read-arguments.ts';
import { orderOptions } from '#electron/cli/order-options.ts';
import { workOrder } from '#electron/cli/work-order.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { DEMO_DAY, demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const tanks = [...records.tank.keys()];
const options = { ...orderOptions, basis: 'text', stock: 'text', materials: 'text' } as const;

function work(...argv: readonly string[]) {
  const given = readArguments([...(argv.includes('--on') ? [] : ['--on', DEMO_DAY]), ...argv], options);
  if (!given.ok) throw new Error(given.fault);
  return workOrder(given.value, records);
}

function refusals(...argv: readonly string[]): readonly string[] {
  const worked = work('--sizes', 'T07', ...argv);
  return worked.ok ? [] : worked.fault;
}

/** All totals of an order, independent of the order of its sizes. */
function totals(...argv: readonly string[]) {
  const worked = work(...argv);
  if (!worked.ok) throw new Error(worked.fault.join(' '));
  const { bench, order, pricing } = worked.value;
  const sums = orderSums(
    bench,
    order.columns.map((column) => column.key),
    pricing,
  );
  if (!sums.ok) throw new Error(JSON.stringify(sums.fault));
  const { needs, quote } = sums.value;
  const used = Object.fromEntries(needs.needs.map((need) => [need.material, Number(need.used.toPrecision(10))]));
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = quote;
  const { totalCoins, packsTotalCoins, landedCoins } = needs;
  return { used, totalCoins, packsTotalCoins, landedCoins, costCoins, netCoins, grossCoins, depositCoins, hours };
}

/** The ratio of each material's use, to eight decimals. */
function timesUsed(these: ReturnType<typeof totals>, those: ReturnType<typeof totals>) {
  const times = ([material, used]: readonly [string, number]) =>
    [material, Number((used / (those.used[material] ?? 0)).toFixed(8))] as const;
  return Object.fromEntries(Object.entries(these.used).map(times));
}

describe('workOrder', () => {
  test('the order of the sizes does not change what they come to', () => {
    const some = fc.uniqueArray(fc.constantFrom(...tanks), { minLength: 2, maxLength: 4 });
    const shuffled = some.chain((sizes) =>
      fc.tuple(fc.constant(sizes), fc.shuffledSubarray(sizes, { minLength: sizes.length })),
    );
    fc.assert(
      fc.property(
        shuffled,
        fc.constantFrom(...demoRecipes),
        fc.constantFrom('basic', 'full', 'show'),
        ([one, other], recipe, kit) => {
          const order = ['--recipe', recipe, '--kit', kit, '--sizes'];
          const [wanted, got] = [totals(...order, one.join(',')), totals(...order, other.join(','))];
          // Sums of the same figures in another order may differ in the last digit.
          expect({ ...got, used: timesUsed(got, wanted) }).toEqual({ ...wanted, used: timesUsed(wanted, wanted) });
        },
      ),
      { numRuns: 6 },
    );
  });

  test('two of a size use twice what one does, but for what is wanted once a job', () => {
    const [one, two] = [totals('--sizes', 'T07'), totals('--sizes', 'T07x2')];
    expect(new Set(Object.values(timesUsed(two, one)))).toEqual(new Set([2]));
    expect(two.hours).toBeLessThan(2 * one.hours);
  });

  test('T07x2 and T07,T07 use and take the same', () => {
    const [counted, columns] = [totals('--sizes', 'T07x2'), totals('--sizes', 'T07,T07')];
    expect([columns.used, columns.hours]).toEqual([counted.used, counted.hours]);
  });

  test.each(['show', 'basic'])('--kit %s is the same as writing it over', (kit) => {
    const whole = totals('--sizes', 'T03,T07', '--kit', kit);
    expect(totals('--sizes', 'T03,T07', '--set', `kit=${kit}`)).toEqual(whole);
    expect(totals('--sizes', 'T03,T07', '--set', `kit="${kit}"`)).toEqual(whole);
    expect(totals('--sizes', 'T03,T07', '--set', `T03.kit=${kit}`, '--set', `T07.kit=${kit}`)).toEqual(whole);
  });

  test('a bigger kit costs more', () => {
    const costs = ['basic', 'full', 'show'].map((kit) => totals('--sizes', 'T07', '--kit', kit).costCoins);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
  });

  test('the house figure written again changes nothing', () => {
    const figures = [...records.line.values()].filter((line) => line.recipe === 'H1' && line.role !== 'tank');
    const sets = figures.flatMap((line) => ['--set', `${line.name}=${line.text}`]);
    expect(totals('--sizes', 'T07', ...sets)).toEqual(totals('--sizes', 'T07'));
  });

  test.each([
    ['drainag=4 mm', 'Nothing called drainag. Did you mean drainage?'],
    ['T07.drainag=4 mm', 'Nothing called drainag. Did you mean drainage?'],
    ['drainage=2 * dam_hieght', 'drainage=2 * dam_hieght: Nothing called dam_hieght. Did you mean dam_height? (at 5)'],
    [
      'capping=drainage + edge_bead',
      'capping=drainage + edge_bead: Millimetres plus litres cannot be added. In drainage + edge_bead, both sides must be of one kind. (at 1)',
    ],
    ['litter=40 L', 'litter=40 L: This line is a length in mm. 40 L is a volume. (at 1)'],
    ['kit=shwo', 'kit=shwo: kit takes basic, full or show. You gave shwo. Did you mean show?'],
    ['drainage=drainage', 'drainage=drainage: This box depends on itself: drainage -> drainage.'],
  ])('--set %s is refused: %s', (set, says) => {
    expect(refusals('--set', set)).toEqual([says]);
  });

  test('a ring through three lines is told once, whole and in its order', () => {
    expect(
      refusals('--set', 'drainage=capping * 4', '--set', 'capping=freeboard', '--set', 'freeboard=drainage / 4'),
    ).toEqual(['drainage=capping * 4: This box depends on itself: drainage -> capping -> freeboard -> drainage.']);
  });

  test('several faults are told together, each once, however many sizes have it', () => {
    expect(refusals('--set', 'litter=40 L', '--set', 'kit=7')).toHaveLength(2);
    const worked = work('--sizes', 'T03,T07,T08', '--set', 'litter=40 L');
    expect(!worked.ok && worked.fault).toEqual(['litter=40 L: This line is a length in mm. 40 L is a volume. (at 1)']);
  });

  test.each([
    [['--on', '31.12.2026'], '--on 31.12.2026: write the day as 2026-11-25.'],
    [['--on', '2027-02-30'], '--on 2027-02-30: there is no such day.'],
    [['--basis', 'pack'], '--basis pack: choose used or packs.'],
    [['--materials', 'M01,M0x4'], 'No material called M0x4. Did you mean M04?'],
    [['--stock', 'not-there.csv'], 'Cannot read not-there.csv.'],
  ])('%j is refused: %s', (argv, says) => {
    expect(refusals(...argv)).toEqual([says]);
  });

  test('a missing figure or one out of range is an answer, not a refusal', () => {
    expect(refusals('--set', 'T07.dam_height=', '--set', 'litter=500 mm', '--set', 'soil_front=-5 mm')).toEqual([]);
  });
});
