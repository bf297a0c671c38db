import { describe, expect, test } from 'vitest';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { benchAtHand } from './book-at-hand.ts';
import { issued } from './issued-demo.ts';
import { box, rowIds, shown } from './shown-box.ts';

describe('sizes', () => {
  test('a tank is taken, taken again, copied with what is written in it, built twice and put away', async () => {
    const hand = await benchAtHand();
    const keys = () => hand.bench.view.peek().columns.map((column) => `${column.key}x${column.count}`);
    hand.bench.acts.takeTank('T05');
    hand.bench.acts.takeAgain('T07');
    expect(keys()).toEqual(['T03x1', 'T07x1', 'T07#2x1', 'T08x1', 'T05x1']);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.acts.copySize('T03');
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
      where: 'T07, Soil, house rule',
      title: 'Soil, placed',
      answer: { figure: '33.70', unit: 'L' },
      nameInRules: 'soil_placed',
      rule: { kind: 'Rule', closed: false },
      putIn: {
        words:
          '36.045\u00a0L less 0.538\u00a0L clay edge less 1.802\u00a0L buried hardscape less 0.000\u00a0L background, soil displaced = 33.705\u00a0L',
      },
    });
    expect(bench.panel.peek()?.sources[0]).toEqual({
      name: 'soil_gross',
      label: 'Soil before taking off',
      figure: '36.05\u00a0L',
      from: 'house rule',
      steps: true,
    });
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
    expect(panel?.cautions).toEqual([
      {
        words: 'Standing water below the mesh gap always; a sour smell means drain now.',
        decides: 'Builder decides; common practice, no source.',
      },
    ]);
    bench.panelActs.writeNote('Deep bed');
    expect(bench.panel.peek()?.note).toEqual({ text: 'Deep bed', closed: false });
    bench.panelActs.backToHouse();
    expect(bench.panel.peek()?.house).toBeUndefined();
  });

  test('a value of one size is made that of the whole job, and a figure that is given is shown as it was given', async () => {
    const { bench } = await benchAtHand();
    bench.acts.write([{ row: 'shelf_rating', column: 'T08', text: '150' }]);
    bench.acts.choose({ row: 'shelf_rating', column: 'T08' });
    const local = bench.panel.peek();
    bench.panelActs.forWholeJob();
    expect(local).toMatchObject({ answer: { figure: '150' }, house: { figure: '100', canHold: true } });
    expect(bench.panel.peek()).toMatchObject({
      standing: [{ look: 'job', words: 'Value for the whole job' }],
      house: { figure: '100', canHold: false },
    });
  });

  test('names complete, faults are marked at their place and told', async () => {
    const { bench } = await benchAtHand();
    const help = bench.acts.helpFor({ row: 'litter', column: 'T07' });
    expect(help.check('  dam_hieght / 4').faults).toEqual([
      { from: 2, to: 12, says: 'Nothing called dam_hieght. Did you mean dam_height?' },
    ]);
    expect(help.complete('drain_g', 7)[0]).toEqual({
      from: 0,
      to: 7,
      insert: 'drain_gap',
      kind: 'name',
      label: 'Air gap under the mesh',
      figure: '10\u00a0mm',
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
    bench.acts.copySize('T07');
    bench.acts.write([{ row: 'litter', column: 'T07#2', text: '20' }]);
    const found = bench.compare('T07', 'T07#2');
    expect(found?.causes).toEqual([
      {
        line: 'litter',
        label: 'Litter depth',
        section: 'Litter',
        one: '30\u00a0mm',
        other: '20\u00a0mm',
        why: 'house figure against local figure',
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

describe('an issued quote', () => {
  test('lies on the bench as it stood, whatever the house does since, and cannot be written in', async () => {
    const hand = await benchAtHand(issued(demoRecords()));
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '20' }]);
    hand.bench.acts.sendToHouse({ row: 'litter', column: 'T07' });
    hand.bench.open('Q-0001A');
    expect(shown(hand, 'litter', 'T07')).toEqual(['in quote Q-0001 A', '30', 'issued', 'house', 'well']);
    expect(hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '25' }])).toBe(
      'This quote is issued and stays as it is. Make a revision to change it.',
    );
    hand.bench.open('J01');
    expect(shown(hand, 'litter', 'T07')[1]).toBe('20');
  });
});

/** The demo with one job of this many sizes. */
function manySizes(count: number): Records {
  const records = demoRecords();
  const tanks = [...records.tank.keys()];
  const sizes = Array.from({ length: count }, (_, at) => ({
    id: `S${at}`,
    job: 'J01',
    tank: tanks[at % tanks.length] ?? 'T07',
    order: at,
    label: '',
    count: 1,
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
    hand.book.doAct('writeLine', { line: 'H1.litter', text: '25 mm' });
    expect(shown(hand, 'litter', keys[0] ?? '')[1]).toBe('25');
    hand.bench.acts.write([{ row: 'drain_gap', column: keys[0] ?? '', text: '12' }]);
    hand.clock.rest();
    expect(keys.map((key) => shown(hand, 'litter', key)[1])).toEqual(keys.map(() => '25'));
  });
});
