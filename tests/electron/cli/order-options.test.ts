import { describe, expect, test } from 'vitest';
import { orderMisuse, orderOptions, readOrder, readSet } from '#electron/cli/order-options.ts';
import { readArguments, type Arguments } from '#electron/cli/read-arguments.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { DEMO_DAY, demoColumn, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function given(...argv: readonly string[]): Arguments {
  const read = readArguments(argv, orderOptions);
  if (!read.ok) throw new Error(read.fault);
  return read.value;
}

function order(...argv: readonly string[]) {
  const read = readOrder(given(...argv), derive(records, DEMO_DAY));
  if (!read.ok) return read.fault;
  const { recipe, columns, job } = read.value;
  return {
    recipe,
    sizes: columns.map(({ key, tank, count, locals }) => [key, tank.id, count, Object.fromEntries(locals)]),
    job: Object.fromEntries(job),
  };
}

describe('readOrder', () => {
  test('sizes side by side, of H1 unless said', () => {
    expect(order('--sizes', 'T03,T07')).toEqual({
      recipe: 'H1',
      sizes: [
        ['T03', 'T03', 1, {}],
        ['T07', 'T07', 1, {}],
      ],
      job: {},
    });
  });

  test('T07x2 is built twice; T07,T07 are two columns', () => {
    expect(order('--sizes', 'T07x2, T07 ,T07x12', '--recipe', 'H2')).toMatchObject({
      recipe: 'H2',
      sizes: [
        ['T07', 'T07', 2, {}],
        ['T07#2', 'T07', 1, {}],
        ['T07#3', 'T07', 12, {}],
      ],
    });
  });

  test('what is written for the whole job, for a size, and for its second column', () => {
    expect(
      order(
        '--sizes',
        'T07,T07',
        '--kit',
        'show',
        '--set',
        'litter=20 mm',
        '--set',
        'T07.capping=',
        '--set',
        'T07#2.litter = drainage / 2',
      ),
    ).toEqual({
      recipe: 'H1',
      sizes: [
        ['T07', 'T07', 1, { capping: '' }],
        ['T07#2', 'T07', 1, { litter: 'drainage / 2' }],
      ],
      job: { kit: 'show', litter: '20 mm' },
    });
  });

  test('a figure with a point in it is no name of a size', () => {
    expect(order('--sizes', 'T07', '--set', 'litter=12.5 mm', '--set', 'T07.capping=0.5 * litter')).toMatchObject({
      sizes: [['T07', 'T07', 1, { capping: '0.5 * litter' }]],
      job: { litter: '12.5 mm' },
    });
  });

  test('of two values for the same box the last counts', () => {
    expect(order('--sizes', 'T07', '--set', 'litter=1 mm', '--set', 'litter=2 mm')).toMatchObject({
      job: { litter: '2 mm' },
    });
  });

  test('a job of the book brings its recipe, sizes and counts', () => {
    const sizes = [...records.size.values()].filter((size) => size.job === 'J01');
    const result = order('--job', 'J01', '--set', 'litter=20 mm');
    expect(result).toMatchObject({ recipe: records.job.get('J01')?.recipe, job: { litter: '20 mm' } });
    expect(typeof result === 'object' && result.sizes.length).toBe(sizes.length);
  });

  test.each([
    [['--sizes', 'T7'], 'No tank called T7 in the tank book. Did you mean T07?'],
    [['--sizes', 'aquarium'], 'No tank called aquarium in the tank book.'],
    [['--sizes', 'T7x2'], 'No tank called T7 in the tank book. Did you mean T07?'],
    [['--sizes', 'T07x0'], 'T07x0: build a size 1 to 999 times.'],
    [['--sizes', 'T07x1000'], 'T07x1000: build a size 1 to 999 times.'],
    [['--sizes', 'T03,,T07'], '--sizes has an empty place; write the sizes as T03,T07x2.'],
    [['--sizes', ''], '--sizes has an empty place; write the sizes as T03,T07x2.'],
    [['--sizes', 'T07', '--recipe', 'h1'], 'No recipe called h1. Did you mean H1? There are: H1, H2, H3, H4.'],
    [['--job', 'J1'], 'No job called J1. Did you mean J01? There are: J01.'],
    [['--sizes', 'T07', '--set', 'litter'], '--set litter: write line=RULE, or T07.line=RULE for one size.'],
    [['--sizes', 'T07', '--set', '=20 mm'], '--set =20 mm: write line=RULE, or T07.line=RULE for one size.'],
    [['--sizes', 'T07', '--set', 'T08.litter=2'], '--set T08.litter=2: no size T08 in this order. Sizes: T07.'],
    [['--sizes', 'T07', '--set', 'T07#2.litter=2'], '--set T07#2.litter=2: no size T07#2 in this order. Sizes: T07.'],
  ])('%j: %s', (argv, says) => {
    expect(order(...argv)).toBe(says);
  });
});

describe('orderMisuse', () => {
  test.each([
    [['--sizes', 'T07'], undefined],
    [['--job', 'J01'], undefined],
    [[], 'Say which sizes: --sizes T03,T07x2, or --job J01.'],
    [['--sizes', 'T07', '--job', 'J01'], 'Give --job or --sizes, not both.'],
    [['T07'], 'What is T07 for? Sizes are given as --sizes T03,T07x2.'],
  ])('%j: %s', (argv, says) => {
    expect(orderMisuse(given(...argv))).toBe(says);
  });
});

describe('readSet', () => {
  test('a rule may have signs of comparison in it', () => {
    expect(readSet('T07.air_open=vent_share >= 2 %', [demoColumn(records, 'T07')])).toEqual({
      ok: true,
      value: { column: 'T07', line: 'air_open', text: 'vent_share >= 2 %' },
    });
  });
});
