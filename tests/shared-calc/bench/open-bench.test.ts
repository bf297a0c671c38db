import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import { openBench } from '#shared-calc/bench/open-bench.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { sayBoxCause } from '#shared-calc/words/say-box-cause.ts';
import { demoBench, demoColumn, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const flat = { soil_rise: '0 mm' };

function told(bench: ReturnType<typeof demoBench>, column: string, line: string) {
  const { state, cause, flags } = bench.box(column, line);
  return { state, flags, says: cause && sayBoxCause(cause, line) };
}

interface Written {
  readonly line: string;
  readonly text: string;
  readonly where: string;
}

/** A line written in the house, for the job, or in one size. */
function withText(input: BenchInput, { line, text, where }: Written): BenchInput {
  if (where === 'job') return { ...input, job: new Map([...input.job, [line, text]]) };
  if (where !== 'house') {
    const written = (column: ColumnInput) => ({ ...column, locals: new Map([...column.locals, [line, text]]) });
    return { ...input, columns: input.columns.map((each) => (each.key === where ? written(each) : each)) };
  }
  return { ...input, lines: input.lines.map((each) => (each.name === line ? { ...each, text } : each)) };
}

describe('openBench', () => {
  test('a size follows the house, the job or its own value, and says which', () => {
    const bench = demoBench({ sizes: ['T03', 'T07'], job: flat, locals: { T07: { drain_gap: '15 mm' } } }, records);
    expect(
      [bench.box('T03', 'drain_gap'), bench.box('T07', 'drain_gap'), bench.box('T07', 'soil_rise')].map((box) => [
        box.value,
        box.state,
      ]),
    ).toEqual([
      [0.01, 'house'],
      [0.015, 'local'],
      [0, 'job'],
    ]);
  });

  test('a local value changes its own size alone', () => {
    const house = demoBench({ sizes: ['T03', 'T07'] }, records);
    const local = demoBench({ sizes: ['T03', 'T07'], locals: { T07: { litter: '20 mm' } } }, records);
    expect(local.box('T03', 'leaves_need').value).toBe(house.box('T03', 'leaves_need').value);
    expect(local.box('T07', 'leaves_need').value).toBeCloseTo(0.16124 * (2 / 3), 5);
  });

  test('an empty box needs a figure, and what reads it waits on it by name', () => {
    const bench = demoBench({ sizes: ['T07'], job: { litter: '' } }, records);
    expect([told(bench, 'T07', 'litter'), told(bench, 'T07', 'leaves_need')]).toEqual([
      { state: 'needs a figure', flags: [], says: 'Needs a figure: litter.' },
      { state: 'waiting', flags: [], says: 'Waits on litter. Needs a figure: litter.' },
    ]);
  });

  test('a tank that nobody measured waits on the measurement, and only what reads it', () => {
    const { damHeightMm: _, ...unmeasured } = records.tank.get('T07') ?? { id: '' };
    const bench = openBench({
      ...demoBench({ sizes: ['T07'] }, records).input(),
      columns: [{ ...demoColumn(records, 'T07'), tank: unmeasured as never }],
    });
    expect([told(bench, 'T07', 'dam_height').says, told(bench, 'T07', 'soil_front').state]).toEqual([
      'Needs a figure: dam_height.',
      'waiting',
    ]);
    expect(bench.box('T07', 'floor_area').value).toBeCloseTo(0.4005, 12);
  });

  test('a cycle of three lines is told whole from each of them, and those that read it wait', () => {
    const bench = demoBench(
      { sizes: ['T07'], job: { drainage: 'capping * 4', capping: 'freeboard', freeboard: 'drainage / 4' } },
      records,
    );
    expect([
      told(bench, 'T07', 'drainage'),
      told(bench, 'T07', 'capping').says,
      told(bench, 'T07', 'soil_front').state,
    ]).toEqual([
      { state: 'loop', flags: [], says: 'This box depends on itself: drainage -> capping -> freeboard -> drainage.' },
      'This box depends on itself: capping -> freeboard -> drainage -> capping.',
      'waiting',
    ]);
    expect(bench.box('T07', 'litter').value).toBe(0.03);
  });

  test('a figure outside its bounds is flagged and still worked', () => {
    const bench = demoBench({ sizes: ['T07'], job: { litter: '130 mm' } }, records);
    expect(told(bench, 'T07', 'litter')).toEqual({ state: 'job', flags: ['out of range'], says: undefined });
    expect(bench.box('T07', 'litter_dry').value).toBeCloseTo(0.4005 * 130 * 0.0122, 9);
  });

  test('a function that has no answer says why in the box that asked it', () => {
    const bench = demoBench({ sizes: ['T07'], job: { light_hours: '0 h/d' } }, records);
    expect(told(bench, 'T07', 'lamps')).toEqual({
      state: 'waiting',
      flags: [],
      says: 'The light of one lamp must be more than zero.',
    });
  });

  test('litres plus millimetres are refused where they are written', () => {
    const bench = demoBench({ sizes: ['T07'], job: { soil_placed: 'soil_gross - drainage' } }, records);
    expect(told(bench, 'T07', 'soil_placed').state).toBe('needs a figure');
    expect(told(bench, 'T07', 'soil_placed').says).toContain('Millimetres cannot be taken from litres.');
  });

  test('an update writes only what differs and comes to the same as a fresh bench', () => {
    const bench = demoBench({ sizes: ['T03', 'T07', 'T08'] }, records);
    const input = bench.input();
    const lines = input.lines.map((line) => (line.name === 'litter' ? { ...line, text: '40 mm' } : line));
    const columns = [...input.columns.slice(1), demoColumn(records, 'T05', { kit: 'show' })];
    const rest = bench.update({ ...input, lines, columns, job: new Map(Object.entries(flat)) }, ['T07']);
    while (rest()) continue;
    const fresh = openBench(bench.input());
    const all = (of: typeof bench) =>
      columns.flatMap(({ key }) => lines.map((line) => [key, line.name, of.box(key, line.name).value]));
    expect(all(bench)).toEqual(all(fresh));
  });

  test('edits that come before the last one has reached every size come to the same as a fresh bench', () => {
    const keys = ['T03', 'T06', 'T07', 'T08', 'T09', 'T10'];
    const bench = demoBench({ sizes: keys }, records);
    const texts = fc.constantFrom('40 mm', '', 'drainage / 4', 'freeboard', '12 mm', 'capping * 4');
    const edit = fc.record({
      line: fc.constantFrom('litter', 'drainage', 'capping', 'freeboard'),
      text: texts,
      where: fc.constantFrom('house', 'house', 'house', 'job', 'T07'),
      first: fc.subarray(keys, { maxLength: 3 }),
      slices: fc.constantFrom(0, 0, 1),
    });
    const boxes = (of: typeof bench) =>
      keys.flatMap((key) =>
        of.input().lines.map(({ name }) => [key, name, of.box(key, name).value, told(of, key, name).says]),
      );
    fc.assert(
      fc.property(fc.array(edit, { minLength: 2, maxLength: 6 }), (edits) => {
        let more = () => false;
        for (const { first, slices, ...written } of edits) {
          more = bench.update(withText(bench.input(), written), first);
          for (let turn = 0; turn < slices; turn += 1) more();
        }
        while (more()) continue;
        const fresh = openBench(bench.input());
        expect(boxes(bench)).toEqual(boxes(fresh));
        fresh.close();
      }),
      { numRuns: 25 },
    );
  });

  test('a cycle whose line went is told no more when the line comes back as a figure', () => {
    const bench = demoBench({ sizes: ['T07'] }, records);
    const { lines } = bench.input();
    const [first] = lines.filter((line) => line.name === 'litter');
    if (!first) throw new Error('no litter');
    const own = { ...first, id: 'own', name: 'own_depth', text: 'own_depth + 1 mm' };
    bench.update({ ...bench.input(), lines: [...lines, own] });
    const cycle = told(bench, 'T07', 'own_depth').state;
    bench.update({ ...bench.input(), lines });
    bench.update({ ...bench.input(), lines: [...lines, { ...own, text: '7 mm' }] });
    expect([cycle, bench.box('T07', 'own_depth').value]).toEqual(['loop', 0.007]);
  });

  test('columns named first are worked at once, the rest a slice at a time', () => {
    const bench = demoBench({ sizes: ['T03', 'T07'] }, records);
    const rest = bench.update({ ...bench.input(), job: new Map([['litter', '20 mm']]) }, ['T07']);
    const before = [bench.box('T07', 'litter').value, bench.box('T03', 'litter').value];
    expect([before, rest(), bench.box('T03', 'litter').value]).toEqual([[0.02, 0.03], false, 0.02]);
  });

  test('a line taken out leaves those that read it faulty, by name, and nothing else', () => {
    const bench = demoBench({ sizes: ['T07'] }, records);
    bench.update({ ...bench.input(), lines: bench.input().lines.filter((line) => line.name !== 'drain_gap') });
    expect(told(bench, 'T07', 'drain_room').says).toContain('Nothing called drain_gap');
    expect(bench.box('T07', 'drainage_need').value).toBeCloseTo(0.016837347, 9);
  });
});
