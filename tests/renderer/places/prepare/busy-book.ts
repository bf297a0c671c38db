import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Actual, Job, Records, Tub } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';

interface BusyJob extends Partial<NewJob> {
  readonly title: string;
  readonly state: Job['state'];
  readonly depositOn?: string;
}

const jobs: readonly BusyJob[] = [
  {
    title: 'Reading room',
    client: 'Brackenlume Library',
    sizes: [{ tank: 'T05', count: 1 }],
    handover: '2027-04-28',
    state: 'deposit in',
    depositOn: '2027-03-08',
    area: 'Riverside',
    animals: 'Small frogs',
    audience: 'Readers of all ages',
  },
  {
    title: 'Fernbank School',
    sizes: [
      { tank: 'T07', count: 1 },
      { tank: 'T03', count: 2 },
    ],
    writings: [
      { line: 'public_site', text: 'yes' },
      { line: 'screen_under_lamps', text: 'yes' },
      { line: 'soil_rise', text: '0 mm' },
    ],
    handover: '2027-06-14',
    state: 'ordered',
    depositOn: '2027-03-01',
    area: 'Hill',
    animals: 'Dwarf geckos',
    audience: 'Reception class, under-fives',
  },
  {
    title: 'Council hall',
    sizes: [{ tank: 'T08', count: 1 }],
    writings: [{ line: 'kit', text: 'show' }],
    handover: '2027-05-03',
    state: 'deposit in',
    depositOn: '2027-03-05',
    area: 'Riverside',
  },
  {
    title: 'Dentist',
    sizes: [{ tank: 'T05', count: 1 }],
    handover: '2027-03-01',
    state: 'in service',
    depositOn: '2026-12-01',
    area: 'Riverside',
  },
];

/** The demo with four jobs under way (J02 to J05), some tubs, and what five more jobs used. */
export function busyBook(): Records {
  let records = demoRecords();
  for (const job of jobs) records = withJob(records, job);
  for (let nth = 1; nth <= 5; nth += 1) {
    records = withJob(records, {
      title: `Earlier ${nth}`,
      sizes: [{ tank: 'T05', count: 1 }],
      state: 'closed',
      depositOn: '2026-06-01',
    });
  }
  return { ...records, tub: byId(tubs), actual: byId(measured()) };
}

function withJob(records: Records, { state, depositOn, ...asked }: BusyJob): Records {
  const made = newJob(records, { recipe: 'H1', sizes: [], writings: [], by: 'client', on: DEMO_DAY, ...asked });
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  const after = applyChange(records, made.value.change);
  const job = after.job.get(made.value.job);
  if (!job) throw new Error('no job');
  return {
    ...after,
    job: new Map(after.job).set(job.id, {
      ...job,
      state,
      ...(depositOn !== undefined && { depositOn, depositCoins: 65_000 }),
    }),
  };
}

const tubs: readonly Tub[] = [
  {
    id: 'T-01',
    kind: 'C1',
    startedOn: '2027-01-15',
    claimedBy: 'J02',
    spare: false,
    place: 'Back room, top shelf',
    note: '',
    founders: 1250,
    way: 'split',
  },
  {
    id: 'T-02',
    kind: 'C1',
    startedOn: '2027-03-01',
    spare: true,
    place: 'Garage',
    note: '',
    founders: 1250,
    way: 'split',
  },
];

/** Drainage of the five earlier jobs took 20 % more than was planned: 11.41 min each. */
function measured(): readonly Actual[] {
  return [6, 7, 8, 9, 10].map((nth) => ({
    id: `J${String(nth).padStart(2, '0')}.drainage_work`,
    job: `J${String(nth).padStart(2, '0')}`,
    line: 'drainage_work',
    value: 13.7,
    unit: 'min',
    on: `2026-10-0${nth - 5}`,
    note: '',
  }));
}

function byId<R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> {
  return new Map(records.map((record) => [record.id, record]));
}
