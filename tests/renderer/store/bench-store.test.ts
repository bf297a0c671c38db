import { describe, expect, test } from 'vitest';
import type { BoxView } from '#renderer/bench/view-model.ts';
import { sectionId } from '#renderer/store/section-rows.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';

function box({ bench }: BenchAtHand, row: string, column: string): BoxView | undefined {
  return bench.view.peek().boxOf(row, column);
}

/** Words, figure, look, source and form of a box. */
function shown(hand: BenchAtHand, row: string, column: string): readonly string[] {
  const { said = '', figure = '', look = '', source = '', form = '' } = box(hand, row, column) ?? {};
  return [said, figure, look, source, form];
}

function rowIds({ bench }: BenchAtHand): readonly string[] {
  return bench.view.peek().rows.map((row) => row.id);
}

describe('a bench as it is shown', () => {
  test('the demo opens on three sizes with their cards', async () => {
    const { bench } = await benchAtHand();
    const view = bench.view.peek();
    expect(view.recipe).toEqual({ title: 'H1 humid planted', aside: '' });
    expect(view.columns.map(({ key, label, size, kit, count }) => [key, label, size, kit, count])).toEqual([
      ['T03', 'T03', '445 × 445 × 445\u00a0mm', 'full', 1],
      ['T07', 'T07', '900 × 445 × 600\u00a0mm', 'full', 1],
      ['T08', 'T08', '1200 × 600 × 600\u00a0mm', 'full', 1],
    ]);
    expect(view.columns[1]?.section).toEqual({
      shape: 'rectangle', overallDepth: 445, insideHeight: 600, damHeight: 150, glass: 6, baseGlass: 6, frontBow: 0,
      sideReturn: 0, frontVent: 0, drainage: 40, drainGap: 10, meshThickness: 0, meshUpturn: 30, capping: 10,
      beadWidth: 20, beadHeight: 20, soilFront: expect.closeTo(90, 9), soilRise: 40, litter: 30, coverVent: 25, lamps: 2,
    });
  });

  test('a figure of the house is a well, a worked one lies flat, and both are read out whole', async () => {
    const hand = await benchAtHand();
    expect([shown(hand, 'litter', 'T07'), shown(hand, 'soil_front', 'T07'), shown(hand, 'inside_length', 'T07')]).toEqual([
      ['', '30', 'plain', 'house', 'well'],
      ['', '90', 'plain', 'house', 'flat'],
      ['', '900', 'plain', 'house', 'flat'],
    ]);
    expect(box(hand, 'soil_front', 'T07')?.spoken).toBe('Soil at the front, T07, 90\u00a0mm, house value');
    expect(box(hand, 'hottest_day', 'T07')?.spoken).toBe('Hottest day in the tank, T07, 25.50\u00a0°C, house value');
  });

  test('a closed section says its main figure, and the work its minutes', async () => {
    const hand = await benchAtHand();
    expect([shown(hand, sectionId('Tank'), 'T07').slice(0, 3), shown(hand, sectionId('Drainage'), 'T07').slice(0, 3)]).toEqual([
      ['floor, m²', '0.4005', 'headline'],
      ['clay, L', '16.84', 'headline'],
    ]);
    expect(shown(hand, sectionId('Work'), 'T07')[0]).toBe('minutes');
    expect(box(hand, sectionId('Place'), 'T07')).toBeUndefined();
  });

  test('a section opens and closes, and its tucked lines come out on asking', async () => {
    const hand = await benchAtHand();
    const capping = sectionId('Capping');
    expect(rowIds(hand)).not.toContain('capping');
    hand.bench.acts.fold(capping);
    expect([rowIds(hand).includes('capping'), rowIds(hand).includes('bead_width')]).toEqual([true, false]);
    expect(hand.bench.view.peek().rows.find((row) => row.id === capping)).toMatchObject({ open: true, more: '4 more' });
    hand.bench.acts.showAll(capping);
    expect(rowIds(hand)).toContain('bead_width');
  });

  test('parts of a mix say how many parts they are', async () => {
    const { bench } = await benchAtHand();
    expect(bench.view.peek().rows.find((row) => row.id === 'coir_need')).toEqual({
      kind: 'line', id: 'coir_need', label: 'Coir', aside: '3 parts', unit: 'L', inset: true,
    });
  });

  test('checks that hold are tucked away and counted', async () => {
    const { bench } = await benchAtHand();
    const checks = bench.view.peek().rows.find((row) => row.id === sectionId('Checks'));
    expect(checks).toMatchObject({ open: true, more: expect.stringMatching(/^\d+ more hold$/) });
  });

  test('a line with a local value is never tucked, and a closed section that holds one says so', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'bead_width', column: 'T07', text: '25' }]);
    const head = () => hand.bench.view.peek().rows.find((row) => row.id === sectionId('Capping'));
    expect(head()).toMatchObject({ open: false, holds: '1 local' });
    hand.bench.acts.fold(sectionId('Capping'));
    expect(rowIds(hand)).toContain('bead_width');
  });

  test('the foot has the sums of each size and counts its flags', async () => {
    const hand = await benchAtHand();
    const { footOf } = hand.bench.view.peek();
    expect(footOf('gross', 'T07').spoken).toMatch(/^Price, T07, [\d,]+\.\d\d cr$/);
    expect(footOf('flags', 'T07').flags.map((flag) => flag.says)).toContain('1 stop');
  });
});

describe('writing in boxes', () => {
  test('a figure without a unit takes that of its line, and the change is named in words', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '15' }])).toBeUndefined();
    expect(shown(hand, 'drain_gap', 'T08')).toEqual(['local', '15', 'plain', 'local', 'well']);
    await hand.quiet();
    expect(hand.book.line.peek().undo).toBe('air gap under the mesh of T08 to 15 mm');
    expect([...hand.service.records().localValue.values()]).toEqual([
      { id: 'J01-T08.drain_gap', job: 'J01', size: 'J01-T08', line: 'drain_gap', text: '15 mm', note: '', by: 'us' },
    ]);
  });

  test('a rule written here says so and is worked', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: 'clamp(drainage / 3, 10 mm, 20 mm)' }]);
    expect(shown(hand, 'drain_gap', 'T08')).toEqual(['local rule', '15', 'plain', 'local', 'well']);
  });

  test('several boxes are one change', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write(['T03', 'T07', 'T08'].map((column) => ({ row: 'litter', column, text: '20 mm' })));
    await hand.quiet();
    expect([hand.service.entries().length, hand.book.line.peek().undo]).toEqual([1, '3 boxes of Ferry waiting hall']);
  });

  test('one text that cannot be read keeps all of them from being written, and is named', async () => {
    const hand = await benchAtHand();
    const says = hand.bench.acts.write([
      { row: 'litter', column: 'T03', text: '20 mm' },
      { row: 'litter', column: 'T07', text: 'dam_hieght / 4' },
      { row: 'litter', column: 'T08', text: '20 L' },
    ]);
    expect(says).toMatch(/^Litter depth, T07: Nothing called dam_hieght\. Did you mean dam_height\?.*Litter depth, T08/s);
    await hand.quiet();
    expect(hand.service.entries()).toEqual([]);
  });

  test('a rule that leads back to itself is refused with the whole ring', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.write([{ row: 'drainage', column: 'T07', text: 'soil_front / 3' }])).toBe(
      'This box depends on itself: drainage -> soil_front -> drainage.',
    );
  });

  test('emptying a box that follows the house leaves it without a figure, and what reads it waits by name', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'moisture_start', column: 'T03', text: '' }]);
    expect([shown(hand, 'moisture_start', 'T03'), shown(hand, 'wetting', 'T03')]).toEqual([
      ['needs a figure', '', 'needs', 'local', 'well'],
      ['waits on moisture at start', '', 'waiting', 'house', 'flat'],
    ]);
  });

  test('emptying a box that is written over takes it back to the house, as Delete does', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['', '30', 'plain', 'house', 'well']);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.acts.clear([{ row: 'litter', column: 'T03' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['', '30', 'plain', 'house', 'well']);
  });

  test('a figure out of its range computes all the same', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '130' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['local, out of range', '130', 'range', 'local', 'well']);
  });

  test('with inches shown a bare number is inches, and with a comma it is read by the comma', async () => {
    const records = demoRecords();
    const [workshop] = records.workshop.values();
    if (!workshop) throw new Error('no workshop');
    const set = { ...workshop, unitsShown: { length: 'in' }, decimalComma: true };
    const hand = await benchAtHand({ ...records, workshop: new Map([['workshop', set]]) });
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '1,5' }]);
    hand.bench.acts.write([{ row: 'drain_gap', column: 'T03', text: '12,5 mm' }]);
    await hand.quiet();
    const kept = [...hand.service.records().localValue.values()].map((value) => value.text);
    expect([kept, box(hand, 'litter', 'T03')?.figure, box(hand, 'drain_gap', 'T03')?.entry]).toEqual([
      ['1.5 in', '12.5 mm'],
      '1,50',
      '12,5 mm',
    ]);
  });

  test('a value for the whole job stands in every size, and Delete takes it back', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'soil_rise', column: 'T03', text: '0' }]);
    expect(hand.bench.hands.forWholeJob({ row: 'soil_rise', column: 'T03' })).toBeUndefined();
    expect(['T03', 'T07', 'T08'].map((column) => shown(hand, 'soil_rise', column))).toEqual(
      Array.from({ length: 3 }, () => ['whole job', '0', 'plain', 'job', 'well']),
    );
    hand.bench.acts.clear([{ row: 'soil_rise', column: 'T07' }]);
    expect(shown(hand, 'soil_rise', 'T03')).toEqual(['', '40', 'plain', 'house', 'well']);
  });

  test('a value sent to the house is every size\'s from then on', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '25' }]);
    hand.bench.hands.sendToHouse({ row: 'litter', column: 'T03' });
    expect([shown(hand, 'litter', 'T03'), shown(hand, 'litter', 'T08')]).toEqual([
      ['', '25', 'plain', 'house', 'well'],
      ['', '25', 'plain', 'house', 'well'],
    ]);
  });

  test('another kit for one size is a local value, and the kit of the house takes it away', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.setKit('T07', 'show');
    expect(hand.bench.view.peek().columns.map((column) => column.kit)).toEqual(['full', 'show', 'full']);
    hand.bench.acts.setKit('T07', 'full');
    expect(shown(hand, 'kit', 'T07')).toEqual(['', 'full', 'plain', 'house', 'well']);
  });
});

describe('boxes that did not change', () => {
  test('stay the same objects when another size is written in', async () => {
    const hand = await benchAtHand();
    const rows = rowIds(hand);
    const before = rows.map((row) => [box(hand, row, 'T03'), box(hand, row, 'T07')] as const);
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '20' }]);
    const after = rows.map((row) => [box(hand, row, 'T03'), box(hand, row, 'T07')] as const);
    expect(after.every(([one], at) => one === before[at]?.[0])).toBe(true);
    const changed = rows.filter((_, at) => after[at]?.[1] !== before[at]?.[1]);
    expect(changed).toContain('litter');
    expect(changed).not.toContain('drainage');
  });
});

describe('sizes', () => {
  test('a tank is taken, taken again, copied with what is written in it, built twice and put away', async () => {
    const hand = await benchAtHand();
    const keys = () => hand.bench.view.peek().columns.map((column) => `${column.key}x${column.count}`);
    hand.bench.hands.take('T05');
    hand.bench.acts.takeAgain('T07');
    expect(keys()).toEqual(['T03x1', 'T07x1', 'T07#2x1', 'T08x1', 'T05x1']);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.hands.copySize('T03');
    expect([shown(hand, 'litter', 'T03#2')[0], shown(hand, 'litter', 'T07#2')[0]]).toEqual(['local', '']);
    hand.bench.acts.setCount('T05', 2);
    hand.bench.acts.putAway('T07');
    expect(keys()).toEqual(['T03x1', 'T03#2x1', 'T07x1', 'T08x1', 'T05x2']);
    await hand.quiet();
    expect(hand.book.waiting.peek()).toBe(0);
  });
});

describe('the working panel', () => {
  test('tells where a box stands, its rule, the figures put in and where each came from', async () => {
    const { bench } = await benchAtHand();
    bench.acts.write([{ row: 'soil_rise', column: 'T07', text: '0' }]);
    bench.acts.choose({ row: 'soil_placed', column: 'T07' });
    expect(bench.panel.peek()).toMatchObject({
      where: 'T07, Soil',
      title: 'Soil, placed',
      answer: { figure: '33.70', unit: 'L' },
      nameInRules: 'soil_placed',
      rule: { kind: 'Rule', closed: false },
      putIn: {
        words:
          '36.045\u00a0L less 0.538\u00a0L clay edge less 1.802\u00a0L buried hardscape less 0.000\u00a0L background, soil displaced = 33.705\u00a0L',
      },
    });
    expect(bench.panel.peek()?.sources[0]).toEqual({ name: 'soil_gross', figure: '36.05\u00a0L', from: 'house rule', steps: true });
    bench.panelActs.stepDown('soil_gross');
    expect(bench.panel.peek()).toMatchObject({ title: 'Soil before taking off', steppedFrom: ['Soil, placed'] });
    expect(bench.panel.peek()?.sources.map((source) => [source.name, source.from])).toContainEqual([
      'inside_length',
      'tank book, T07',
    ]);
    bench.panelActs.stepUp();
    expect(bench.panel.peek()?.title).toBe('Soil, placed');
  });

  test('tells the house value beside a local one, and what that changes', async () => {
    const { bench } = await benchAtHand();
    bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '15' }]);
    bench.acts.choose({ row: 'drain_gap', column: 'T08' });
    const panel = bench.panel.peek();
    expect(panel?.standing).toEqual([{ look: 'local', words: 'Local value, for T08 only' }]);
    expect(panel?.house).toMatchObject({ figure: '10', unit: 'mm', canGoBack: true, canSend: true });
    expect(panel?.house?.effects.slice(0, 1)).toEqual([
      { label: 'Room for water', houseFigure: '10.08', figure: '8.64', unit: 'L' },
    ]);
    expect(panel?.caution).toEqual({
      words: 'Standing water stays below the mesh, always. A sour smell means drain now.',
      decides: 'Builder decides.',
    });
    bench.panelActs.writeNote('Deep bed');
    expect(bench.panel.peek()?.note).toEqual({ text: 'Deep bed', closed: false });
    bench.panelActs.backToHouse();
    expect(bench.panel.peek()?.house).toBeUndefined();
  });

  test('names complete, faults are marked at their place and told', async () => {
    const { bench } = await benchAtHand();
    const help = bench.acts.helpFor({ row: 'litter', column: 'T07' });
    expect(help.check('  dam_hieght / 4').faults).toEqual([
      { from: 2, to: 12, says: 'Nothing called dam_hieght. Did you mean dam_height?' },
    ]);
    expect(help.complete('drain_g', 7)[0]).toEqual({
      from: 0, to: 7, insert: 'drain_gap', kind: 'name', label: 'Air gap under the mesh', figure: '10\u00a0mm',
    });
    expect(help.hint('clamp(3', 7)?.written).toBe('clamp(figure, low, high)');
    const kit = bench.acts.helpFor({ row: 'kit', column: 'T07' });
    expect(kit.complete('', 0).map((offer) => offer.insert)).toEqual(['basic', 'full', 'show']);
  });
});

describe('finding', () => {
  test('a line is found by its words and brought out', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.findLine('bead width')).toEqual({ row: 'bead_width', column: 'T03' });
    expect(rowIds(hand)).toContain('bead_width');
    expect(hand.bench.findLine('no such thing')).toBeUndefined();
  });

  test('the flag key walks from flag to flag and comes round', async () => {
    const hand = await benchAtHand();
    const first = hand.bench.nextFlag(false);
    hand.bench.acts.choose(first);
    const second = hand.bench.nextFlag(false);
    hand.bench.acts.choose(second);
    expect(hand.bench.nextFlag(true)).toEqual(first);
    expect(first).not.toEqual(second);
  });

  test('two sizes are compared: what was measured or written otherwise, and what comes of it', async () => {
    const { bench } = await benchAtHand();
    bench.hands.copySize('T07');
    bench.acts.write([{ row: 'litter', column: 'T07#2', text: '20' }]);
    const found = bench.compare('T07', 'T07#2');
    expect(found?.causes).toEqual([
      {
        line: 'litter', label: 'Litter depth', section: 'Litter', one: '30\u00a0mm', other: '20\u00a0mm',
        why: 'house figure against local value',
      },
    ]);
    expect(found?.results.map((result) => result.line)).toContain('leaves_need');
  });
});

describe('the service beside the page', () => {
  test('where both come to the same price nothing is said', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '20' }]);
    await hand.quiet();
    hand.clock.pass(1000);
    await hand.quiet();
    expect(hand.book.line.peek().said).toBeUndefined();
  });

  test('where they differ it is said plainly', async () => {
    const hand = await benchAtHand();
    hand.service.misprice(2);
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '20' }]);
    await hand.quiet();
    hand.clock.pass(1000);
    await hand.quiet();
    expect(hand.book.line.peek().said?.words).toMatch(/^This page and the book do not come to the same price\. T03: /);
  });
});

/** The demo with one job of so many sizes. */
function manySizes(count: number): Records {
  const records = demoRecords();
  const tanks = [...records.tank.keys()];
  const sizes = Array.from({ length: count }, (_, at) => ({
    id: `S${at}`, job: 'J01', tank: tanks[at % tanks.length] ?? 'T07', order: at, label: '', count: 1,
  }));
  return { ...records, size: new Map(sizes.map((size) => [size.id, size])) };
}

describe('many sizes', () => {
  test('what is in sight is worked at once, the rest in slices, and nothing is left out', async () => {
    const hand = await benchAtHand(manySizes(40));
    const keys = hand.bench.view.peek().columns.map((column) => column.key);
    const last = keys.at(-1) ?? '';
    expect(box(hand, 'litter', last)).toBeUndefined();
    hand.clock.rest();
    expect([keys[0] ?? '', last].map((key) => shown(hand, 'litter', key)[1])).toEqual(['30', '30']);
    const line = [...hand.book.records.peek().line.values()].find((each) => each.id === 'H1.litter');
    if (!line) throw new Error('no line');
    hand.book.apply({ label: 'litter', added: [], updated: [{ kind: 'line', from: line, to: { ...line, text: '25 mm' } }], removed: [] });
    expect(shown(hand, 'litter', keys[0] ?? '')[1]).toBe('25');
    hand.bench.acts.write([{ row: 'drain_gap', column: keys[0] ?? '', text: '12' }]);
    hand.clock.rest();
    expect(keys.map((key) => shown(hand, 'litter', key)[1])).toEqual(keys.map(() => '25'));
  });
});
