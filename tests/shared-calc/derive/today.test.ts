import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { boardByDay } from '#shared-calc/derive/job-board.ts';
import { dueOf, dueWithin, openDue } from '#shared-calc/derive/today.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { after, issued, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** What is to be done up to so many days after a day, in the order of the list. */
function todo(records: Records, on: Day, days = 0): readonly (readonly [day: Day, what: string, late: number])[] {
  return dueWithin(dueOf(derive(records, on)), on, days).map(({ day, what, late }) => [day, what, late]);
}

function paid(handover: Day, on: Day): Records {
  const records = libraryJob({ handover });
  return after(records, recordDeposit(records, { job: 'J02', coins: 64_500, on }));
}

/** 8 March 2027, the day of the enquiry, is a Monday. */
describe('an enquiry', () => {
  test('is answered three days after it came, and stays late on that day until the job moves on', () => {
    const records = libraryJob();
    expect(todo(records, '2027-03-10')).toEqual([]);
    expect(todo(records, '2027-03-11')).toEqual([['2027-03-11', 'answer the enquiry', 0]]);
    expect(todo(records, '2027-03-16')).toEqual([['2027-03-11', 'answer the enquiry', 5]]);
    expect(todo(after(records, moveJob(records, 'J02', 'surveyed')), '2027-03-16')).toEqual([]);
  });

  test('whose third day is a closed one is answered on the open day before', () => {
    expect(todo(libraryJob({ on: '2027-03-10' }), '2027-03-12')).toEqual([['2027-03-12', 'answer the enquiry', 0]]);
  });
});

describe('a quote', () => {
  // Issued on 8 March for 21 days: until Monday 29 March, so it is asked about on Friday 26.
  const quoted = issued(libraryJob(), 'A').records;

  test('is asked about three days before it runs out, once', () => {
    expect(todo(quoted, '2027-03-25')).toEqual([]);
    expect(todo(quoted, '2027-03-29')).toEqual([['2027-03-26', 'ask about Q-0001A', 3]]);
    const asked = withRecords(quoted, 'done', [
      { id: 'D1', on: '2027-03-26', step: 'asked', who: 'R-builder', job: 'J02', against: [], note: '', ends: true },
    ]);
    expect(todo(asked, '2027-03-29')).toEqual([['2027-03-29', 'Q-0001A ran out', 0]]);
  });

  test('that nobody asked about has run out after its last day, until the job is closed', () => {
    expect(todo(quoted, '2027-03-31')).toEqual([['2027-03-29', 'Q-0001A ran out', 2]]);
    expect(todo(after(quoted, moveJob(quoted, 'J02', 'closed')), '2027-03-31')).toEqual([]);
  });
});

describe('an act with a day', () => {
  test('stands on its day in the words that were written', () => {
    const records = after(libraryJob(), setNextAct(libraryJob(), 'J02', 'Ring about the door', '2027-03-09'));
    expect(todo(records, '2027-03-10')).toEqual([['2027-03-09', 'Ring about the door', 1]]);
  });
});

describe('a paid job', () => {
  // Scenario 11: Mon 8 Mar, handover wanted 28 April; plants to order by 10 March decide.
  test('has each of its steps on its last day, the deciding one first and named', () => {
    const items = openDue()(derive(paid('2027-04-28', '2027-03-08'), '2027-03-08')).ofJob('J02');
    const orders = items.filter(({ source }) => source === 'goods');
    expect(orders.map(({ day, what, who, client, decides }) => [day, what, who, client, decides])).toContainEqual([
      '2027-03-10',
      'order plants',
      'R-builder',
      'Brackenlume Library',
      true,
    ]);
    expect(items.filter(({ decides }) => decides)).toHaveLength(1);
    expect(items.map(({ what }) => what)).toEqual(
      expect.arrayContaining(['glue the background', 'start springtails', 'treat the leaves', 'build', 'hand over']),
    );
  });
});

describe('a tub', () => {
  const tub = { id: 'K1', kind: 'C1', spare: false, place: '', note: '', founders: 1250, way: 'split' } as const;
  const standing = withRecords(libraryJob({ on: '2027-03-01' }), 'tub', [{ ...tub, startedOn: '2027-03-01' }]);
  const ofTub = (records: Records, on: Day) => todo(records, on).filter(([, what]) => what === 'feed K1');

  test('is fed a week after its start, and a week after it was fed', () => {
    expect(ofTub(standing, '2027-03-05')).toEqual([]);
    expect(ofTub(standing, '2027-03-10')).toEqual([['2027-03-08', 'feed K1', 2]]);
    const fed = withRecords(standing, 'done', [
      { id: 'D1', on: '2027-03-10', step: 'feed', who: 'R-grower', tub: 'K1', against: [], note: '', ends: false },
    ]);
    expect([ofTub(fed, '2027-03-16'), ofTub(fed, '2027-03-17')]).toEqual([[], [['2027-03-17', 'feed K1', 0]]]);
  });

  test('gives a build its springtails once, though tubs of two kinds have them', () => {
    const both = withRecords(paid('2027-06-28', '2027-03-01'), 'tub', [
      { ...tub, startedOn: '2027-03-01' },
      { ...tub, id: 'K2', kind: 'C2', startedOn: '2027-03-01' },
    ]);
    const harvests = (records: Records) =>
      todo(records, '2027-03-08', 120).filter(([, what]) => what.startsWith('harvest'));
    expect(harvests(both).map(([, what]) => what)).toEqual(['harvest 710 for J02']);
    const harvest = {
      id: 'MV-1',
      lot: 'K2',
      of: 'C2',
      on: '2027-03-30',
      what: 'used',
      amount: -710,
      note: '',
    } as const;
    expect(harvests(withRecords(both, 'move', [{ ...harvest, job: 'J02' }]))).toEqual([]);
  });
});

describe('an order', () => {
  const line = { label: 'Clay', unit: 'L', askedCoins: 980, for: [{ job: 'J02', amount: 20 }] };
  const ordered = withRecords(libraryJob({ on: '2027-03-01' }), 'order', [
    {
      id: 'O-0001',
      supplier: 'S-hollin',
      on: '2027-03-08',
      lines: [
        { ...line, n: 1, of: 'M01', amount: 10, count: 2, due: '2027-03-12' },
        { ...line, n: 2, of: 'M04', amount: 6, count: 1, due: '2027-03-15' },
      ],
      carriageCoins: 0,
      note: '',
    },
  ]);
  const orders = (records: Records, on: Day) => todo(records, on).filter(([, what]) => what.includes('O-0001'));

  test('is taken in on the day promised; past it, it is asked about; what is still out keeps it open', () => {
    expect(orders(ordered, '2027-03-11')).toEqual([]);
    expect(orders(ordered, '2027-03-12')).toEqual([['2027-03-12', 'take in O-0001', 0]]);
    expect(orders(ordered, '2027-03-16')).toEqual([['2027-03-12', 'take in O-0001, or ask', 4]]);
    const came = { lot: 'M-1', of: 'M01', on: '2027-03-12', what: 'in', order: 'O-0001', line: 1, note: '' } as const;
    const part = withRecords(ordered, 'move', [{ ...came, id: 'M-1', amount: 20 }]);
    expect(orders(part, '2027-03-16')).toEqual([['2027-03-15', 'take in O-0001, or ask', 1]]);
    const all = withRecords(part, 'move', [{ ...came, id: 'M-2', lot: 'M-2', of: 'M04', line: 2, amount: 6 }]);
    expect(orders(all, '2027-03-16')).toEqual([]);
  });

  test('that is closed asks for nothing more', () => {
    const [order] = ordered.order.values();
    const closed = withRecords(ordered, 'order', order ? [{ ...order, closedOn: '2027-03-15' }] : []);
    expect(orders(closed, '2027-03-16')).toEqual([]);
  });
});

describe('the store', () => {
  const clay = { lot: 'M-9', of: 'M01', on: '2027-03-01', what: 'in', note: '' } as const;
  const ofClay = (records: Records, on: Day) => todo(records, on).filter(([, what]) => what.includes('clay'));
  const material = libraryJob().material.get('M01');
  const emptied = { ...libraryJob(), move: new Map() };

  test('buys up to its level what is under the least', () => {
    const levelled = withRecords(emptied, 'material', material ? [{ ...material, least: 20, upTo: 60 }] : []);
    const low = withRecords(levelled, 'move', [{ ...clay, id: 'M-9', amount: 7 }]);
    expect(ofClay(low, '2027-03-10')).toEqual([['2027-03-10', 'buy 53 L of Expanded clay 8-16 mm', 0]]);
    expect(ofClay(withRecords(levelled, 'move', [{ ...clay, id: 'M-9', amount: 20 }]), '2027-03-10')).toEqual([]);
  });

  test("writes its amounts with the workshop's decimal sign", () => {
    const workshop = new Map([...emptied.workshop].map(([id, each]) => [id, { ...each, decimalComma: true }]));
    const old = withRecords({ ...emptied, workshop }, 'move', [
      { ...clay, id: 'M-9', amount: 7.5, bestBefore: '2027-03-12' },
    ]);
    expect(ofClay(old, '2027-03-10').map(([, what]) => what)).toEqual(['use 7,50 L of Expanded clay 8-16 mm']);
  });

  test('names goods two weeks before their best-before day, on a closed day, too', () => {
    const old = withRecords(emptied, 'move', [{ ...clay, id: 'M-9', amount: 7, bestBefore: '2027-03-28' }]);
    expect(ofClay(old, '2027-03-13')).toEqual([]);
    expect(ofClay(old, '2027-03-14')).toEqual([['2027-03-14', 'use 7 L of Expanded clay 8-16 mm', 0]]);
  });
});

describe('the list', () => {
  const states: readonly Job['state'][] = ['enquiry', 'surveyed', 'deposit in', 'built', 'handed over', 'closed'];
  const aJob = fc.record({
    state: fc.constantFrom(...states),
    enquired: fc.nat(60),
    next: fc.option(fc.nat(60)),
    handover: fc.option(fc.nat(120)),
  });

  test('is in order of days, what decides first; the board has each job on the day of its first item', () => {
    const start = libraryJob();
    fc.assert(
      fc.property(fc.array(aJob, { minLength: 1, maxLength: 4 }), fc.nat(90), (wanted, at) => {
        const on = addDays('2027-03-01', at);
        const derived = derive(withJobs(start, wanted), on);
        const items = dueOf(derived);
        expect(items.map(({ day }) => day)).toEqual(items.map(({ day }) => day).toSorted());
        expect(new Set(items.map(({ key }) => key)).size).toBe(items.length);
        for (const { job, on: day } of boardByDay({ ...derived, items }).flatMap(({ rows }) => rows)) {
          const days = items.filter((item) => item.job === job.id).map((item) => item.day);
          expect(day).toBe(days.toSorted()[0]);
        }
      }),
      { numRuns: 20 },
    );
  });
});

interface WantedJob {
  readonly state: Job['state'];
  readonly enquired: number;
  readonly next: number | null;
  readonly handover: number | null;
}

/** Copies of the library's job with its size, in the states and with the days that are wanted. */
function withJobs(records: Records, wanted: readonly WantedJob[]): Records {
  const [job, size] = [records.job.get('J02'), [...records.size.values()].find((each) => each.job === 'J02')];
  if (!job || !size) throw new Error('the library has no job');
  const jobs = wanted.map(({ state, enquired, next, handover }, at): Job => ({
    ...job,
    id: `J1${at}`,
    state,
    enquiredOn: addDays('2027-03-01', enquired),
    ...(next !== null && { nextOn: addDays('2027-03-01', next) }),
    ...(handover !== null && { handover: addDays('2027-04-01', handover) }),
    depositOn: '2027-03-01',
  }));
  const sizes = jobs.map(({ id }) => ({ ...size, id: `${id}-1`, job: id }));
  return withRecords(withRecords(records, 'job', jobs), 'size', sizes);
}
