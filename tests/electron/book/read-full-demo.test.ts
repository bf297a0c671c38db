import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { readFullDemo } from '#electron/book/read-full-demo.ts';
import { makeFullBook } from '#electron/book/seed-demo.ts';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { previousOpen } from '#shared-calc/calendar/work-calendar.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { houseOffers } from '#shared-calc/derive/house-offers.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';

const monday = '2027-03-08';

let onMonday: Derived | undefined;

/** The workshop of that Monday; it is told once. */
function toldOnMonday(): Derived {
  onMonday ??= derive(valueOf(readFullDemo(monday)).records, monday);
  return onMonday;
}

describe('readFullDemo', () => {
  test('no act of its story is refused', () => {
    expect(valueOf(readFullDemo(monday)).refused).toEqual([]);
  });

  test('the same day gives the same workshop', () => {
    expect(valueOf(readFullDemo(monday)).records).toEqual(toldOnMonday().records);
  });

  test('there is a job in every state, numbered by the day of its enquiry', () => {
    const jobs = [...toldOnMonday().records.job.values()];
    const enquired = jobs.map(({ enquiredOn = '' }) => enquiredOn);

    expect(jobs.length).toBeGreaterThanOrEqual(12);
    expect(jobStates.filter((state) => !jobs.some((job) => job.state === state))).toEqual([]);
    expect(enquired).toEqual(enquired.toSorted());
  });

  test('nothing in it was written on a closed day or after the day it is made', () => {
    const { records } = toldOnMonday();
    const calendar = calendarOf(records);
    const days = [
      ...[...records.issuedQuote.values()].map(({ issuedOn }) => issuedOn),
      ...[...records.move.values(), ...records.done.values(), ...records.treatmentBatch.values()].map(({ on }) => on),
    ];

    expect(days.length).toBeGreaterThan(20);
    expect(days.filter((day) => day > monday || previousOpen(day, calendar) !== day)).toEqual([]);
  });

  test('most checks hold, some may not hold or are not known yet, few stop', () => {
    const derived = toldOnMonday();
    const checks = [...derived.records.job.keys()].flatMap((id) => {
      const job = derived.job(id);
      return job ? job.keys.flatMap((key) => [...job.checks(key), ...job.place(key)]) : [];
    });
    const count = (state: string) => checks.filter((check) => check.state === state).length;
    const stops = checks.filter(({ level, state }) => level === 'stop' && state === 'fails').length;

    expect(count('holds') / checks.length).toBeGreaterThan(0.75);
    expect(count('may not hold')).toBeGreaterThan(10);
    expect(count('not known yet')).toBeGreaterThan(5);
    expect(stops).toBeGreaterThan(0);
    expect(stops).toBeLessThan(10);
  });

  test('orders are in, partly in and open; one is late, and one is for the store', () => {
    const { records } = toldOnMonday();
    const orders = [...records.order.values()].map((order) => orderStanding(records, order, monday));
    const states = Map.groupBy(orders, ({ state }) => state);

    expect([...states.keys()].toSorted()).toEqual(['in', 'open', 'part in']);
    expect(orders.filter(({ lateDays }) => lateDays > 0)).toHaveLength(1);
    expect(orders.filter(({ order }) => order.lines.every((line) => line.for.length === 0))).toHaveLength(1);
  });

  test('a change of the house is offered to the jobs that are sold and not built', () => {
    const offered = houseOffers(toldOnMonday()).map(({ job }) => job.state);

    expect(offered.toSorted()).toEqual(['accepted', 'deposit in', 'in quarantine', 'ordered', 'ready to build']);
  });

  test('every place has something to show', () => {
    const { records } = toldOnMonday();
    const revised = [...records.job.keys()].filter((id) => (latestQuote(records, id)?.revision ?? 'A') > 'A');
    const { tub, treatmentBatch, animalBatch, placement, actual, localValue, quoteLine } = records;

    expect(revised.length).toBeGreaterThanOrEqual(3);
    expect(
      [tub, treatmentBatch, animalBatch, placement, actual, localValue, quoteLine].map(({ size }) => size > 1),
    ).toEqual(Array.from({ length: 7 }, () => true));
  });
});

describe('makeFullBook', () => {
  test('the book is whole and sound, its quotes are as issued, and undo does not empty it', () => {
    const book = valueOf(makeFullBook(join(temporaryFolder(), 'Shop.loamwright'), { today: monday }));
    onTestFinished(book.close);

    expect(book.check()).toMatchObject({ value: { sound: true, findings: [], revision: 1 } });
    expect(valueOf(book.undo())).toBe('nothing');
    expect(book.nextQuote(undefined)).toEqual({
      number: `Q-${String(quotesIn(book.records())).padStart(4, '0')}`,
      revision: 'A',
    });
  });
});

/** The number after the last. */
function quotesIn({ issuedQuote }: Derived['records']): number {
  return new Set([...issuedQuote.values()].map(({ number }) => number)).size + 1;
}
