import { effect } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { sectionId } from '#renderer/store/section-rows.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { benchAtHand } from './book-at-hand.ts';
import { box, rowIds, shown } from './shown-box.ts';

describe('a bench as it is shown', () => {
  test('the demo opens on three sizes with their cards', async () => {
    const { bench } = await benchAtHand();
    const view = bench.view.peek();
    expect(view.recipe).toEqual({ title: 'H1 Humid planted', aside: '' });
    expect(view.columns.map(({ key, label, size, kit, count }) => [key, label, size, kit, count])).toEqual([
      ['T03', 'T03', '445 × 445 × 445 mm', 'full', 1],
      ['T07', 'T07', '900 × 445 × 600 mm', 'full', 1],
      ['T08', 'T08', '1200 × 600 × 600 mm', 'full', 1],
    ]);
    const { soilFront, ...section } = view.columns[1]?.section ?? {};
    expect(soilFront).toBeCloseTo(90, 9);
    expect(section).toEqual({
      shape: 'rectangle',
      overallDepth: 445,
      insideHeight: 600,
      damHeight: 150,
      glass: 6,
      baseGlass: 6,
      frontBow: 0,
      sideReturn: 0,
      frontVent: 0,
      drainage: 40,
      drainGap: 10,
      meshThickness: 0,
      meshUpturn: 30,
      capping: 10,
      beadWidth: 20,
      beadHeight: 20,
      soilRise: 40,
      litter: 30,
      coverVent: 25,
      lamps: 2,
    });
  });

  test('a figure of the house is a well, a worked one lies flat, and both are read out whole', async () => {
    const hand = await benchAtHand();
    expect([
      shown(hand, 'litter', 'T07'),
      shown(hand, 'soil_front', 'T07'),
      shown(hand, 'inside_length', 'T07'),
    ]).toEqual([
      ['', '30', 'plain', 'house', 'well'],
      ['', '90', 'plain', 'house', 'flat'],
      ['', '900', 'plain', 'house', 'flat'],
    ]);
    expect(box(hand, 'soil_front', 'T07')?.spoken).toBe('Soil at the front, T07, 90\u00a0mm, house rule');
    expect(box(hand, 'hottest_day', 'T07')?.spoken).toBe(
      'Hottest day in the tank, T07, 27.31\u00a0°C, house rule, up to 29.9',
    );
  });

  test('a closed section says its main figure, and the work its minutes', async () => {
    const hand = await benchAtHand();
    expect([
      shown(hand, sectionId('Tank'), 'T07').slice(0, 3),
      shown(hand, sectionId('Drainage'), 'T07').slice(0, 3),
    ]).toEqual([
      ['floor, m²', '0.4005', 'headline'],
      ['clay, L', '16.84', 'headline'],
    ]);
    expect(shown(hand, sectionId('Work'), 'T07')[0]).toBe('minutes');
    expect(shown(hand, sectionId('Mist and water'), 'T07').slice(0, 2)).toEqual(['fills in, d, down to 47', '67']);
    expect(box(hand, sectionId('Mist and water'), 'T07')?.spoken).toBe(
      'Mist and water, T07, fills in 67.2 d, down to 47',
    );
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
      kind: 'line',
      id: 'coir_need',
      label: 'Coir',
      aside: '3 parts',
      unit: 'L',
      inset: true,
    });
  });

  test('checks that hold are tucked away and counted', async () => {
    const { bench } = await benchAtHand();
    const checks = bench.view.peek().rows.find((row) => row.id === sectionId('Checks'));
    expect(checks).toMatchObject({ open: true, more: '21 more hold' });
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
    expect(footOf('flags', 'T07').flags.map((flag) => flag.says)).toContain('2 stop');
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

  test('an edit that moves no limit of the place is shown once, however many sizes there are', async () => {
    const records = demoRecords();
    const more = Array.from({ length: 20 }, (_, at) => ({
      id: `M${at}`,
      job: 'J01',
      tank: 'T03',
      order: 10 + at,
      label: `M${at}`,
      count: 1,
    }));
    const hand = await benchAtHand(withRecords(records, 'size', [...records.size.values(), ...more]));
    let views = 0;
    const stop = effect(() => {
      void hand.bench.view.value;
      views += 1;
    });
    hand.clock.rest();
    views = 0;
    const before = hand.bench.view.peek().columns;
    hand.bench.acts.write([{ row: 'litter_decay', column: 'T07', text: '1 each/yr' }]);
    hand.clock.rest();
    const after = hand.bench.view.peek().columns;
    stop();
    expect(hand.bench.view.peek().boxOf('litter_decay', 'T07')?.source).toBe('local');
    expect(views).toBe(1);
    expect(after.filter((head, at) => head !== before[at])).toEqual([]);
  });
});
