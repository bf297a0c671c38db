import { describe, expect, test } from 'vitest';
import { unasked, type Survey } from '#shared-calc/fields/survey.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { jobOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';
import { issued } from './issued-demo.ts';
import { box, rowIds } from './shown-box.ts';

/** The demo with these answers at the place of its first job. */
function asked(answers: Partial<Survey>): Records {
  const records = demoRecords();
  return withRecords(records, 'job', [{ ...jobOf(records, 'J01'), survey: { ...unasked, ...answers } }]);
}

function foot({ bench }: BenchAtHand, column: string): readonly string[] {
  return bench.view
    .peek()
    .footOf('flags', column)
    .flags.map(({ says }) => says);
}

function section({ bench }: BenchAtHand) {
  const row = bench.view.peek().rows.find(({ id }) => id === 'section Place limits');
  return row?.kind === 'section' ? row : undefined;
}

describe('limits of the place on the bench', () => {
  test('what nobody asked is counted as not known yet in the foot of each size, and in its closed section', async () => {
    const hand = await benchAtHand();
    expect(foot(hand, 'T03')).toContain('7 not known yet');
    expect(section(hand)).toMatchObject({ open: false, holds: '21 not known yet' });
  });

  test('a way in that is too narrow for two of three sizes is a stop of those two', async () => {
    const before = await benchAtHand(asked({ narrowestMm: 700 }));
    const hand = await benchAtHand(asked({ narrowestMm: 456 }));
    expect(foot(before, 'T07')).toContain('2 stop');
    expect(foot(hand, 'T07')).toContain('3 stop');
    expect(foot(hand, 'T07')).toContain('6 not known yet');
    expect(foot(hand, 'T03')[0]).toBe(foot(before, 'T03')[0]);
  });

  test('a limit that holds stands behind the others; nobody writes in it', async () => {
    const hand = await benchAtHand(asked({ underFives: 'no', weakImmunity: 'yes' }));
    hand.bench.acts.fold('section Place limits');
    expect(section(hand)).toMatchObject({ open: true, more: '1 more hold' });
    expect(rowIds(hand)).not.toContain('limit underFives');
    expect(box(hand, 'limit weakImmunity', 'T07')).toMatchObject({ look: 'watch', said: 'watch', closed: true });
    hand.bench.acts.showAll('section Place limits');
    expect(box(hand, 'limit underFives', 'T07')).toMatchObject({ look: 'holds', said: 'holds' });
  });

  test('the flag key reaches a limit, opens its section and tells in the panel what to ask, and where', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.choose({ row: 'limit weakImmunity', column: 'T03' });
    const place = hand.bench.nextFlag(false);
    expect(place).toEqual({ row: 'limit weakImmunity', column: 'T07' });
    expect(rowIds(hand)).toContain('limit weakImmunity');
    hand.bench.acts.choose({ row: 'limit shelf', column: 'T07' });
    const panel = hand.bench.panel.peek();
    expect(panel).toMatchObject({
      where: 'T07, Place limits',
      title: 'Shelf',
      answer: { figure: 'not known yet', unit: '' },
      check: {
        decides: 'Building owner or structural engineer decides.',
        isUnknown: true,
        askAt: { says: 'To the survey of J01', to: '#/jobs/J01/survey' },
      },
    });
    expect(panel?.check?.says).toContain('nobody has asked what the shelf is rated for. Ask the building owner.');
  });

  test('a flag of one size alone comes after the last line of the recipe, then the key comes round', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.choose({ row: 'limit animalKind', column: 'T08' });
    expect(hand.bench.nextFlag(false)?.row).not.toMatch(/^limit/);
    hand.bench.acts.choose(hand.bench.nextFlag(false));
    expect(hand.bench.nextFlag(true)).toEqual({ row: 'limit animalKind', column: 'T08' });
  });

  test('an answer, and an edit that makes a tank heavier, move the limit of the shelf', async () => {
    const hand = await benchAtHand(asked({ shelfRatingKg: 1000 }));
    hand.bench.acts.choose({ row: 'limit shelf', column: 'T03' });
    const says = () =>
      hand.bench.panel
        .peek()
        ?.standing.map(({ words }) => words)
        .join(' ');
    const before = says();
    hand.bench.acts.write([{ row: 'drainage', column: 'T08', text: '80 mm' }]);
    expect(says()).not.toBe(before);
    hand.book.doAct('writeSurvey', { job: 'J01', survey: { shelfRatingKg: 100 }, figures: [] });
    expect(hand.bench.panel.peek()?.check?.says).toContain('the shelf is rated for 100.00\u00a0kg');
  });

  test('with more sizes than are worked at once the limits follow after the edit', async () => {
    const hand = await benchAtHand(asked({ shelfRatingKg: 100 }));
    for (let more = 0; more < 6; more += 1) hand.bench.acts.takeTank('T05');
    const painted = hand.bench.view.subscribe(() => undefined);
    hand.clock.rest();
    const last = hand.bench.view.peek().columns.at(-1)?.key ?? '';
    expect(foot(hand, last)).toContain('6 not known yet');
    const stops = foot(hand, last)[0];
    hand.book.doAct('writeSurvey', { job: 'J01', survey: { underFives: 'yes' }, figures: [] });
    hand.clock.rest();
    expect(foot(hand, last)).toContain('5 not known yet');
    expect(foot(hand, last)[0]).not.toBe(stops);
    painted();
  });

  test('an issued quote keeps the limits that it was issued with', async () => {
    const hand = await benchAtHand(issued(asked({ underFives: 'yes' })));
    hand.book.doAct('writeSurvey', { job: 'J01', survey: { underFives: 'no' }, figures: [] });
    hand.bench.open('Q-0001A');
    expect(box(hand, 'limit underFives', 'T07')).toMatchObject({ said: 'stop' });
    hand.bench.open('J01');
    expect(box(hand, 'limit underFives', 'T07')).toMatchObject({ said: 'holds' });
  });
});
