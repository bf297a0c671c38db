import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hashBody } from '#electron/book/issued.ts';
import { askedJob, noWishes } from '#renderer/places/jobs/asked-job.ts';
import { surveyRows, writeFound } from '#renderer/places/jobs/survey-rows.ts';
import { markOrdered, writeJob, type JobFields } from '#shared-calc/acts/job-acts.ts';
import { moveTo } from '#renderer/places/jobs/write-job.ts';
import { addOneOff, oneOffsOf, removeOneOff, writeOneOff } from '#renderer/places/quotes/one-off-writes.ts';
import { asksOf, putInAsked } from '#renderer/places/store/asked-entry.ts';
import { receive } from '#shared-calc/acts/receive.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { expectedGoods } from '#shared-calc/derive/expected-goods.ts';
import { keepNeeded, takeOut, takeSome, writeEntry } from '#renderer/places/store/store-writes.ts';
import { copyJob } from '#shared-calc/jobs/copy-job.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { choosePacks } from '#shared-calc/jobs/pack-choices.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { releaseStock, reserveStock } from '#shared-calc/jobs/reserve-stock.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import { surveyJob } from '#shared-calc/jobs/survey-job.ts';
import { applyChange, invertChange, isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { mapKinds, type Job, type Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { newBook, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { sortRecords } from '#tests/electron/book/sample-records.ts';
import { after, issued, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

type Done = Result<Change, unknown>;
type Act = (records: Records, of: Drawn) => Done;

/** What an act needs that is drawn by chance. */
interface Drawn {
  readonly count: number;
  readonly text: string;
  readonly state: Job['state'];
}

const on = DEMO_DAY;
const job = 'J02';
/** Another that is paid and waits for the shopping run. */
const COPY = 'J03';

const written = (records: Records, fields: JobFields) => writeJob.run(derive(records, on), { job, fields });

/** Every act of the jobs board, the Store, the shopping run and the quotes that is not *Issue*. */
const acts: Readonly<Record<string, Act>> = {
  'a new job': (records) =>
    changeOf(askedJob(records, { ...noWishes, title: 'Lobby', recipe: 'H1', sizes: 'T01' }, on)),
  'a copy': (records) => changeOf(copyJob(records, job, { on })),
  'words of a job': (records, { text }) => written(records, { client: text, site: text, note: text }),
  'way in': (records, { count }) => written(records, { narrowestMm: count * 100 }),
  'way in not measured': (records) => written(records, { narrowestMm: null }),
  basis: (records, { count }) => written(records, { basis: count % 2 === 0 ? 'packs' : 'used' }),
  handover: (records) => written(records, { handover: '2027-06-04' }),
  'a move': (records, { state }) => changeOf(moveTo(derive(records, on), { job, state })),
  built: (records) => changeOf(moveTo(derive(records, on), { job, state: 'built' })),
  'next act': (records, { text }) => setNextAct(records, job, text, on),
  sizes: (records, { count }) => setSizes(records, job, [{ tank: count % 2 === 0 ? 'T05' : 'T07', count }]),
  kit: (records, { count }) =>
    setValues(records, {
      job,
      writings: [{ line: 'kit', text: count % 2 === 0 ? 'basic' : 'show' }],
      by: 'client',
    }),
  deposit: (records, { count }) => recordDeposit(records, { job, coins: count * 1000, on }),
  survey: (records, { text }) => surveyJob(records, { job, figures: [], access: text }),
  'a found figure': (records, { count }) => found(records, `${count * 10} kg`),
  'back to house': (records) => found(records, undefined),
  'into the store': (records, { count, text }) =>
    putInAsked(
      records,
      { ...asksOf('M05'), amount: String(count), note: text, job, bestBefore: '2027-09-01' },
      { display: displayOf(workshopOf(records)), today: on },
    ),
  'an entry': (records, { count }) =>
    withEntry(records, (entry) => writeEntry(entry, { amount: count, reservedFor: undefined })),
  'out of the store': (records) => withEntry(records, (entry) => ok(takeOut(entry))),
  'some of it': (records, { count }) => takeSome(records, { material: 'M05', amount: count / 2, on, job }),
  keep: (records) => {
    const of = records.job.get(job);
    return of ? keepNeeded(derive(records, on), of) : failed('no job');
  },
  'keep nothing': (records) => ok(releaseStock(records, job)),
  'packs by hand': (records, { count }) =>
    ok(choosePacks(records, { jobs: [job], material: 'M01', counts: new Map([['M01-10', count]]) })),
  'packs at their best': (records) => ok(choosePacks(records, { jobs: [job], material: 'M01', counts: undefined })),
  ordered: (records) => markOrdered.run(derive(records, DEMO_DAY), { jobs: [COPY] }),
  received: (records, { count }) => {
    const orders = expectedGoods(derive(records, on));
    const order = orders.ok ? orders.value[count % Math.max(1, orders.value.length)] : undefined;
    if (!order) return failed('nothing is expected');
    const counts = order.packs.map((pack) => Math.min(pack.count, count));
    return ok(receive(records, { order, counts, on, quarantineDays: 30 }));
  },
  'a line of its own': (records, { count, text }) =>
    ok(addOneOff(records, { job, label: `Stand ${text}`, group: 'hardscape', costCoins: count * 100, by: 'us' })),
  'another line': (records, { count }) => withLine(records, (line) => writeOneOff(line, { costCoins: count * 10 })),
  'the line off': (records) => withLine(records, (line) => ok(removeOneOff(line))),
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
    const kept = sortRecords(book.records());
    expect(book.undo()).toMatchObject({ ok: false, fault: { kind: 'lasting' } });
    expect(sortRecords(book.records())).toEqual(kept);
  });
});

/** A job that is paid and ordered, with a line of its own and packs by hand: every act finds something to do. */
function orderedLibrary(): Records {
  const paid = after(libraryJob(), recordDeposit(libraryJob(), { job, coins: 65_000, on }));
  const ordered = after(paid, markOrdered.run(derive(paid, DEMO_DAY), { jobs: [job] }));
  const lined = applyChange(ordered, addOneOff(ordered, { job, ...stand }));
  const kept = after(lined, reserveStock(lined, { job, material: 'M05', amount: 1, on }));
  const found60 = after(kept, found(kept, '60 kg'));
  const copied = applyChange(found60, valueOf(copyJob(found60, job, { on })).change);
  const walked = after(copied, written(copied, { narrowestMm: 780 }));
  const both = after(walked, recordDeposit(walked, { job: COPY, coins: 65_000, on }));
  return applyChange(both, choosePacks(both, { jobs: [job], material: 'M01', counts: new Map([['M01-45', 1]]) }));
}

const stand = { label: 'Stand', group: 'hardscape', costCoins: 9000, by: 'us' } as const;

function found(records: Records, text: string | undefined): Done {
  const of = records.job.get(job);
  const display = displayOf(workshopOf(records));
  const row = of && surveyRows(records, of, display).find(({ line }) => line.name === 'shelf_rating');
  return row ? writeFound(records, { job, line: row.line, text }, display) : failed('no such line');
}

function withEntry(records: Records, act: (entry: Parameters<typeof writeEntry>[0]) => Done): Done {
  const entry = [...records.stockEntry.values()].at(-1);
  return entry ? act(entry) : failed('nothing in the Store');
}

function withLine(records: Records, act: (line: Parameters<typeof writeOneOff>[0]) => Done): Done {
  const [line] = oneOffsOf(records, job);
  return line ? act(line) : failed('no line');
}

function changeOf(made: Result<{ readonly change: Change }, unknown>): Done {
  return made.ok ? ok(made.value.change) : made;
}
