import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { stepMinutes } from '#shared-calc/prepare/step-minutes.ts';
import { timeLine, type PlannedJob } from '#shared-calc/prepare/time-line.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';
import { anyCalendar, anyDay } from './any-plan.ts';
import { isOpenDay } from './count-days.ts';
import { demoPlan } from './demo-plan.ts';

const records = demoRecords();
const terms = { calendar: calendarOf(records), hoursADay: 8 };

function minutesOf(tank: string) {
  const bench = demoBench({ sizes: [tank], job: { soil_rise: '0 mm' } }, records);
  const minutes = stepMinutes(bench, [tank]);
  if (!minutes.ok) throw new Error('no minutes');
  return minutes.value;
}

function jobOf(job: string, tank: string, handover: string): PlannedJob {
  return { job, title: job, plan: demoPlan({ sizes: [tank] }, { handover }, records), minutes: minutesOf(tank) };
}

describe('stepMinutes', () => {
  test('T05 Full, flat: 449.35 minutes of building and handing over, by the day they fall on', () => {
    const minutes = minutesOf('T05');
    const { panel = 0, media = 0, leaves = 0, build = 0, handover = 0 } = Object.fromEntries(minutes);
    expect([panel, handover].map((each) => Number(each.toFixed(2)))).toEqual([53.8, 100]);
    // The handover includes the 60 min of driving, which 449.35 leaves out; carrying needs no helper.
    expect(panel + media + leaves + build + handover - 60).toBeCloseTo(449.35, 2);
  });
});

describe('timeLine', () => {
  test('two builds on one day are more than one builder has; alone each fits', () => {
    const one = jobOf('J01', 'T05', '2027-05-26');
    const two = jobOf('J02', 'T07', '2027-05-26');
    const { clashes } = timeLine([one, two], terms);
    expect(clashes.map(({ date, entries }) => [date, entries.map(({ job, step }) => `${job} ${step}`)])).toEqual([
      ['2027-05-05', ['J01 build', 'J02 build']],
    ]);
    expect(timeLine([one], terms).clashes).toEqual([]);
    expect(timeLine([two], terms).clashes).toEqual([]);
  });

  test('a step of more than a day goes on over the next open days, past the summer closing', () => {
    const job: PlannedJob = {
      job: 'J01',
      title: 'Ferry hall',
      plan: { steps: [{ step: 'build', state: 'open', date: '2027-07-30' }], handover: '2027-08-20' },
      minutes: new Map([['build', 1000]]),
    };
    const { entries } = timeLine([job], terms);
    expect(entries.map(({ date, step, minutes, closed }) => [date, step, minutes, closed])).toEqual([
      ['2027-07-30', 'build', 480, false],
      ['2027-08-09', 'build', 480, false],
      ['2027-08-10', 'build', 40, false],
      ['2027-08-20', 'handover', 0, false],
    ]);
  });

  test('a handover wanted on a closed day is marked', () => {
    const plan = { steps: [], handover: '2027-08-29' };
    expect(timeLine([{ job: 'J01', title: '', plan, minutes: new Map() }], terms).entries[0]?.closed).toBe(true);
  });

  test('no minute is lost, work is carried over to open days alone, and longer days never clash more', () => {
    const job = fc.record({
      job: fc.constantFrom('J01', 'J02', 'J03'),
      title: fc.constant(''),
      plan: fc.record({
        steps: fc.array(
          fc.record({ step: fc.constant('build' as const), state: fc.constant('open' as const), date: anyDay }),
          { maxLength: 2 },
        ),
        handover: anyDay,
      }),
      minutes: fc.integer({ min: 0, max: 3000 }).map((build) => new Map([['build' as const, build]])),
    });
    fc.assert(
      fc.property(
        fc.array(job, { maxLength: 5 }),
        anyCalendar,
        fc.integer({ min: 4, max: 12 }),
        (jobs, calendar, hoursADay) => {
          const { entries, clashes } = timeLine(jobs, { calendar, hoursADay });
          const wanted = jobs.reduce(
            (sum, { plan, minutes }) => sum + plan.steps.length * (minutes.get('build') ?? 0),
            0,
          );
          expect(entries.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(wanted);
          const begun = new Set(jobs.flatMap(({ plan }) => [...plan.steps.map(({ date }) => date), plan.handover]));
          expect(entries.filter(({ date }) => !begun.has(date) && !isOpenDay(date, calendar))).toEqual([]);
          expect(clashes.every(({ minutes, overMinutes }) => minutes - overMinutes === hoursADay * 60)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });
});
