import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { workedJob } from '#tests/worked-job.ts';
import { isHandedOver, isUnderWay, plannedJobs } from '#shared-calc/derive/planned-jobs.ts';
import { sizeSheet } from '#shared-calc/papers/size-sheet.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

const records = busyBook();

function jobOf(id: string): Job {
  const job = records.job.get(id);
  if (!job) throw new Error(id);
  return job;
}

describe('the plan of a job', () => {
  // Scenario 11: T05 Full, handover wanted 28 April, deposit on 8 March.
  test('the library: 8 days late because of plant quarantine, handed over on 6 May', () => {
    const plan = workedJob(records, { id: 'J02' }, DEMO_DAY).plan();
    expect(plan).toMatchObject({
      ok: true,
      value: { plan: { handover: '2027-05-06', late: 8, because: 'plant quarantine', build: '2027-04-15' }, tanks: 1 },
    });
  });

  test('a job with no size says so', () => {
    const bare = { ...records, size: new Map() };
    expect(workedJob(bare, { id: 'J02' }, DEMO_DAY).plan()).toEqual({
      ok: false,
      fault: { kind: 'no-sizes', job: 'J02' },
    });
  });

  test('a tub that is started works the dates anew, as a new handover does; a choice of packs does not', () => {
    const kind = records.cultureKind.get('C1');
    if (!kind) throw new Error('no kind');
    const before = derive(records, DEMO_DAY);
    const first = before.job('J02')?.plan();
    const choice = before.update({ ...before.records, packChoice: new Map() });
    expect(choice.job('J02')?.plan() === first).toBe(true);
    const withTub = before.update(done(records, 'startTub', { kind: kind.id }).records);
    const job = new Map(records.job).set('J02', { ...jobOf('J02'), handover: '2027-06-01' });
    const moved = before.update({ ...records, job });
    expect([withTub, moved].map((each) => each.job('J02')?.plan() === first)).toEqual([false, false]);
  });
});

describe('plannedJobs', () => {
  test('those under way stand on the time line, those handed over in the rounds', () => {
    const derived = derive(records, DEMO_DAY);
    const ids = (passes: (job: Job) => boolean) => plannedJobs(derived, passes).planned.map(({ job }) => job.id);
    expect([ids(isUnderWay), ids(isHandedOver)]).toEqual([['J02', 'J03', 'J04'], ['J05']]);
  });
});

describe('sizeSheet', () => {
  const sheet = sizeSheet(workedJob(records, { id: 'J03' }, DEMO_DAY), { size: 'T07', display: plainDisplay });

  // Scenario 7 and 9: the school's T07, no slope, screen under the lamps.
  test('with the drain blocked the shelf fails by 13.19 kg; the drainage fills by 60.04 mL a day in summer', () => {
    const shelf = sheet?.rows.find(({ line }) => line.name === 'shelf_holds');
    expect([
      shelf && answerOfState(shelf.state),
      shelf?.margin?.spare.toFixed(2),
      sheet?.drain && (sheet.drain.mistMl - sheet.drain.summerMl).toFixed(2),
    ]).toEqual([false, '-13.19', '60.04']);
  });

  test('what a figure does not know stands beside it, by the lines that this recipe has', () => {
    expect(sheet?.beside.map(({ labels }) => labels[0])).toEqual([
      'Warming by lamps',
      'Vapour lost, winter',
      'Load on the shelf',
      'Light from one lamp',
      'Springtails to seed',
      'Background, soil displaced',
      'Leaves to treat, loose',
    ]);
  });

  test('the limits of the place stand with the checks, and what nobody asked is not known yet', () => {
    const measured = {
      ...jobOf('J03'),
      survey: { ...jobOf('J03').survey, narrowestMm: 700, underFives: 'no' },
    } as const;
    const place = (job: Job) => {
      const table = new Map([...records.job, [job.id, job]]);
      const worked = workedJob({ ...records, job: table }, job, DEMO_DAY);
      return sizeSheet(worked, { size: 'T07', display: plainDisplay })?.place.map(({ use, state }) => [use, state]);
    };
    expect(place(measured)).toEqual([
      ['underFives', 'holds'],
      ['weakImmunity', 'not known yet'],
      ['wayIn', 'holds'],
      ['clearSize', 'not known yet'],
      ['shelf', 'not known yet'],
      ['sun', 'not known yet'],
      ['animalKind', 'not known yet'],
    ]);
    expect(new Set(place(jobOf('J03'))?.map(([, state]) => state))).toEqual(new Set(['not known yet']));
  });

  test('a size that is not there leads to the first', () => {
    expect(sizeSheet(workedJob(records, { id: 'J03' }, DEMO_DAY), { size: 'T99', display: plainDisplay })?.size).toBe(
      'T07',
    );
  });
});
