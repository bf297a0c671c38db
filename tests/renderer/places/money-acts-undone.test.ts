import fc from 'fast-check';
import type { Survey } from '#shared-calc/fields/survey.ts';
import { describe, expect, test } from 'vitest';
import { hashBody } from '#electron/book/issued.ts';
import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import type { JobFields } from '#shared-calc/acts/job-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { applyChange, invertChange, isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { mapKinds, type Job, type Records } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { newBook, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { sortRecords } from '#tests/electron/book/sample-records.ts';
import { after, issued, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

type Done = Result<Change, unknown>;
type Act = (records: Records, of: Drawn) => Done;

/** Random input of an act. */
interface Drawn {
  readonly count: number;
  readonly text: string;
  readonly state: Job['state'];
}

const on = DEMO_DAY;
const job = 'J02';
/** Another paid job that waits for the shopping run. */
const COPY = 'J03';

function run<N extends ActName>(records: Records, name: N, input: ActInputs[N]): Done {
  return actTable[name].run(derive(records, on), input);
}

const reason = { anyway: 'The client wants it now', who: 'R-builder' };
const written = (records: Records, fields: JobFields) => run(records, 'writeJob', { job, fields });
const surveyed = (records: Records, survey: Partial<Survey>) =>
  run(records, 'writeSurvey', { job, survey, figures: [] });
const newJob = {
  title: 'Lobby',
  recipe: 'H1',
  sizes: [{ tank: 'T01', count: 1 }],
  writings: [],
  by: 'client',
} as const;

/** Every act of the jobs board, the Store, the shopping run and the quotes, except *Issue*. */
const acts: Readonly<Record<string, Act>> = {
  'a new job': (records) => run(records, 'newJob', { ...newJob, sizes: [...newJob.sizes], writings: [] }),
  'a copy': (records) => run(records, 'copyJob', { job }),
  'words of a job': (records, { text }) => written(records, { client: text, site: text, note: text }),
  'way in': (records, { count }) => surveyed(records, { narrowestMm: count * 100 }),
  'way in not measured': (records) => surveyed(records, { narrowestMm: null }),
  basis: (records, { count }) => written(records, { basis: count % 2 === 0 ? 'packs' : 'used' }),
  handover: (records) => written(records, { handover: '2027-06-04' }),
  'a move': (records, { state }) => run(records, 'moveJob', { job, state, ...reason }),
  built: (records) => run(records, 'moveJob', { job, state: 'built', ...reason }),
  'next act': (records, { text }) => run(records, 'setNextAct', { job, act: text, on }),
  sizes: (records, { count }) =>
    run(records, 'setSizes', { job, sizes: [{ tank: count % 2 === 0 ? 'T05' : 'T07', count }] }),
  kit: (records, { count }) => {
    const writings = [{ line: 'kit', text: count % 2 === 0 ? 'basic' : 'show' }];
    return run(records, 'setValues', { job, writings, by: 'client' });
  },
  deposit: (records, { count }) => run(records, 'recordDeposit', { job, coins: count * 1000, on }),
  survey: (records, { text }) => run(records, 'writeSurvey', { job, figures: [], access: text }),
  'a found figure': (records, { count }) => found(records, `${count * 10} kg`),
  'back to house': (records) => found(records, null),
  'into the store': (records, { count, text }) =>
    run(records, 'putIn', {
      of: 'M05',
      amount: count,
      sealed: true,
      note: text,
      job,
      bestBefore: '2027-09-01',
    }),
  'a lot': (records, { count }) =>
    withLot(records, (lot) => run(records, 'correctLot', { lot, fields: { coins: count, until: null } })),
  'some lost': (records, { text }) => run(records, 'wasteStock', { of: 'M05', amount: 0.5, note: text }),
  counted: (records, { count, text }) => run(records, 'countStock', { of: 'M05', amount: count / 4, note: text }),
  sold: (records, { count }) => run(records, 'sellStock', { of: 'M05', amount: 0.5, coins: count, note: '' }),
  least: (records, { count }) => run(records, 'setLeast', { material: 'M05', least: count, upTo: 20 }),
  'some of it': (records, { count }) => run(records, 'useStock', { of: 'M05', amount: count / 2, job, note: '' }),
  keep: (records) => run(records, 'keepNeeded', { job }),
  'keep nothing': (records) => run(records, 'release', { job }),
  'packs by hand': (records, { count }) =>
    run(records, 'choosePacks', { jobs: [job], material: 'M01', counts: { 'M01-10': count } }),
  'packs at their best': (records) => run(records, 'choosePacks', { jobs: [job], material: 'M01', counts: null }),
  received: (records, { count }) =>
    run(records, 'receiveOrder', { order: 'O-0001', lines: [{ n: 1, count }], note: 'as counted' }),
  'the rest is not coming': (records) => run(records, 'closeOrder', { order: 'O-0001' }),
  'a line of its own': (records, { count, text }) =>
    run(records, 'addQuoteLine', { job, label: `Stand ${text}`, group: 'hardscape', costCoins: count * 100, by: 'us' }),
  'another line': (records, { count }) =>
    withLine(records, (line) => run(records, 'changeQuoteLine', { line, fields: { costCoins: count * 10 } })),
  'the line off': (records) => withLine(records, (line) => run(records, 'removeQuoteLine', { line })),
};

const names = Object.keys(acts);
const drawn = fc.record({
  count: fc.integer({ min: 1, max: 9 }),
  text: fc.string({ unit: 'grapheme', maxLength: 20 }),
  state: fc.constantFrom(...jobStates),
});
const anyActs = fc.array(fc.tuple(fc.constantFrom(...names), drawn), { minLength: 3, maxLength: 9 });

describe('undo over the money places, in a real book', () => {
  const start = orderedLibrary();
  const begin = diffRecords(
    'begin',
    mapKinds<Records>(() => new Map()),
    start,
  );

  test.each(names)('%s: undone, every record is exactly as it was; done again, as it became', (name) => {
    const change = valueOf(
      acts[name]?.(start, { count: 2, text: 'Lobby', state: 'in quarantine' }) ?? failed('no act'),
    );
    expect(isEmptyChange(change)).toBe(false);
    const became = applyChange(start, change);
    expect(sortRecords(became)).not.toEqual(sortRecords(start));
    const undone = applyChange(became, invertChange(change));
    expect(sortRecords(undone)).toEqual(sortRecords(start));
    expect(sortRecords(applyChange(undone, change))).toEqual(sortRecords(became));
  });

  test('many acts, in any order they came, are undone and done again in the file', () => {
    const book = newBook(begin);
    const before = sortRecords(book.records());
    fc.assert(
      fc.property(anyActs, (asked) => {
        const done = asked.filter(([name, of]) => {
          const change = acts[name]?.(book.records(), of);
          return change?.ok && !isEmptyChange(change.value) && book.apply(change.value, book.revision()).ok;
        });
        const became = sortRecords(book.records());
        for (const _ of done) valueOf(book.undo());
        expect(sortRecords(book.records())).toEqual(before);
        for (const _ of done) valueOf(book.redo());
        expect(sortRecords(book.records())).toEqual(became);
        for (const _ of done) valueOf(book.undo());
      }),
      { numRuns: 25, seed: 4 },
    );
  });

  test('Issue is not undone, and neither is what came before it', () => {
    const book = newBook(begin);
    valueOf(book.apply(valueOf(written(book.records(), { client: 'Library' })), book.revision()));
    const { change } = issued(book.records(), 'A');
    const sealed = change.added.map((each) =>
      each.kind === 'issuedQuote' ? { ...each, record: { ...each.record, sha256: hashBody(each.record.body) } } : each,
    );
    valueOf(book.apply({ ...change, added: sealed }, book.revision()));
    const before = sortRecords(book.records());
    expect(book.undo()).toMatchObject({ ok: false, fault: { kind: 'lasting' } });
    expect(sortRecords(book.records())).toEqual(before);
  });

  test('an order is not undone, so that its number is never another order', () => {
    const book = newBook(begin);
    const place = () =>
      valueOf(run(book.records(), 'placeOrders', { jobs: [COPY], suppliers: ['S-hollin'], note: '' }));
    const ordered = [...book.records().order.keys()].length;
    valueOf(book.apply(place(), book.revision()));
    expect(book.undo()).toMatchObject({ ok: false, fault: { kind: 'lasting' } });
    expect([...book.records().order.keys()]).toHaveLength(ordered + 1);
  });
});

/** A paid and ordered job, with a one-off line and packs chosen by hand: every act has something to do. */
function orderedLibrary(): Records {
  const steps: readonly ((records: Records) => Done)[] = [
    (records) => run(records, 'recordDeposit', { job, coins: 65_000, on }),
    (records) => run(records, 'moveJob', { job, state: 'ordered' }),
    (records) => run(records, 'newOrder', { supplier: 'S-hollin', packs: [{ pack: 'M06-10', count: 9 }], note: '' }),
    (records) => run(records, 'addQuoteLine', { job, label: 'Stand', group: 'hardscape', costCoins: 9000, by: 'us' }),
    (records) => run(records, 'keepStock', { job, of: 'M05', amount: 1 }),
    (records) => found(records, '60 kg'),
    (records) => run(records, 'copyJob', { job }),
    (records) => surveyed(records, { narrowestMm: 780 }),
    (records) => run(records, 'recordDeposit', { job: COPY, coins: 65_000, on }),
    (records) => run(records, 'choosePacks', { jobs: [job], material: 'M01', counts: { 'M01-45': 1 } }),
  ];
  return steps.reduce((records, step) => after(records, step(records)), libraryJob());
}

function found(records: Records, text: string | null): Done {
  return run(records, 'setValues', { job, writings: [{ line: 'shelf_rating', text }], by: 'us' });
}

function withLot(records: Records, act: (lot: string) => Done): Done {
  const came = [...records.move.values()].findLast(({ what }) => what === 'in');
  return came ? act(came.id) : failed('nothing in the Store');
}

function withLine(records: Records, act: (line: string) => Done): Done {
  const line = [...records.quoteLine.values()].find((each) => each.job === job);
  return line ? act(line.id) : failed('no line');
}
