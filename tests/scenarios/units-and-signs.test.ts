import { beforeAll, describe, expect, test } from 'vitest';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';
import { readDemo } from '#tests/fixtures/demo/read-demo.ts';

/*
 * A workshop that reads pounds, gallons and degrees Fahrenheit, and one with the decimal comma, on the command line.
 */

const [workshop] = readDemo('workshop');

async function write(book: string, fields: Record<string, unknown>): Promise<void> {
  await lwJson('act', '--book', book, 'put', JSON.stringify({ kind: 'workshop', record: { ...workshop, ...fields } }));
}

/** Name, unit and figure of each line of one size, as the bench prints them; of a range the likely figure. */
async function figures(book: string, sizes: string, ...lines: readonly string[]) {
  const { out } = await lw('bench', '--book', book, '--sizes', sizes, '--kit', 'full', '--lines', lines.join());
  return out
    .split('\n')
    .map((row) => row.trim().split(/\s{2,}/))
    .filter(([name = '']) => lines.includes(name))
    .map(([name = '', unit = '', figure = '']) => ({ name, unit, figure: /[\d.]+/.exec(figure)?.[0] ?? '' }));
}

describe('a workshop that sees US units', () => {
  const { book } = useDemoBook('2026-11-30');
  beforeAll(() => write(book(), { unitsShown: { length: 'in', mass: 'lb', volume: 'gal', temperature: 'degF' } }));

  test('reads a hot day as a sum that adds up: degrees Fahrenheit and steps of them', async () => {
    const shown = await figures(book(), 'T01', 'room_summer', 'light_warming_up', 'hottest_day');
    const [room = 0, lamps = 0, day = 0] = shown.map(({ figure }) => Number(figure));
    expect(shown.map(({ unit }) => unit)).toEqual(['degF', 'F_deg', 'degF']);
    expect(Math.abs(day - room - lamps)).toBeLessThanOrEqual(1);
  });

  test('sees a small figure with the digits it needs: 5.94 g are 0.013 lb, and never 0.01', async () => {
    expect(await figures(book(), 'T01', 'inoculant_need', 'edge_bead')).toEqual([
      { name: 'edge_bead', unit: 'gal', figure: '0.063' },
      { name: 'inoculant_need', unit: 'lb', figure: '0.013' },
    ]);
  });

  test('types a step of temperature as it is seen', async () => {
    const order = ['--book', book(), '--sizes', 'T01', '--lines', 'light_warming_up'];
    const step = await lwJson('bench', ...order, '--set', 'light_warming_up=9 F deg');
    expect(step).toMatchObject({ columns: [{ lines: { light_warming_up: { value: 5, unit: 'K' } } }] });
  });

  test('reads needs and run in its units, where packs keep the size they are sold in and data its unit', async () => {
    const order = ['--book', book(), '--sizes', 'T07', '--kit', 'full', '--materials', 'M01,M15'];
    const needs = await lw('needs', ...order);
    const run = await lw('run', ...order);
    for (const { out } of [needs, run]) {
      expect(out).toMatch(/M01 .* 4\.448 +gal +2 x 10 L/);
      expect(out).toMatch(/M15 .* 0\.355 +lb +2 x 100 g/);
    }
    expect(await lwJson('needs', ...order)).toMatchObject({ needs: [{ unit: 'L' }, { unit: 'g' }] });
  });
});

describe('a workshop with the decimal comma', () => {
  const { book } = useDemoBook('2026-11-30');
  beforeAll(() => write(book(), { decimalComma: true }));
  const bench = (text: string) =>
    lw('bench', '--book', book(), '--sizes', 'T07', '--lines', 'coir_parts', '--set', `coir_parts=${text}`, '--json');

  test('is asked whether 1,5 among the figures of a function is one figure or two', async () => {
    const { code, err } = await bench('max(1,5, 2)');
    expect([code, err.trim()]).toEqual([1, 'coir_parts: 1,5: 1.5, or two figures? Write 1.5 or 1; 5.']);
  });

  test.each([
    ['max(1.5; 2)', 2],
    ['0.5 * 3', 1.5],
    ['max(1; 5; 2)', 5],
    ['max(1, 5, 2)', 5],
    ['2,5', 2.5],
    ["1'250", 1250],
  ])('reads %s as %d', async (text, value) => {
    expect(JSON.parse((await bench(text)).out)).toMatchObject({
      columns: [{ lines: { coir_parts: { value } } }],
    });
  });

  test.each([
    ['12.5', 'coir_parts: Here the decimal sign is the comma: 12,5'],
    ['1.250', 'coir_parts: 1.250 can be read in two ways: 1250 or 1,25?'],
  ])('never guesses at %s', async (text, says) => {
    const { code, err } = await bench(text);
    expect([code, err.trim()]).toEqual([1, says]);
  });

  test('gives the figures of a treatment with its own sign', async () => {
    const treat = (leaves: string) =>
      lw('treat', '--book', book(), '--leaves', leaves, '--aim', 'clean', '--way', 'boil', '--json');
    expect([(await treat('43,51 L')).code, (await treat('43.51 L')).code]).toEqual([0, 1]);
  });
});

describe('a workshop with the decimal point', () => {
  const { book } = useDemoBook('2026-11-30');

  test.each([
    ['delivery_distance=0,125 km', 'delivery_distance: Here the decimal sign is the point: 0.125'],
    ['inside_length=0,900 m', 'inside_length: Here the decimal sign is the point: 0.900'],
    ['inside_length=00,900 m', 'inside_length: Here the decimal sign is the point: 00.900'],
    ['delivery_distance=1,250 km', 'delivery_distance: 1,250 can be read in two ways: 1250 or 1.25?'],
  ])('never guesses at --set "%s"', async (set, says) => {
    const { code, err } = await lw('bench', '--book', book(), '--sizes', 'T07', '--set', set);
    expect([code, err.trim()]).toEqual([1, says]);
  });
});
