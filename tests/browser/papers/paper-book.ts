import { openService, type Service } from '#electron/service/open-service.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import { channels, type Input, type Output } from '#shared-calc/contract/channels.ts';
import { fromRecordLists } from '#shared-calc/contract/record-lists.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

export const paperDay = '2027-03-10';

/** Fills a book with the input of papers: two paid jobs, and a quote with a revision. */
export function fillPaperBook(path: string, recentFile: string): void {
  writeDemoBook(path, paperDay);
  inBook(path, recentFile, (service) => {
    writeLibraryJob(service);
    writeSchoolJob(service);
    writeLongJob(service);
  });
}

/** Adds one more job to a book that is not open. */
export function addPaperJob(
  path: string,
  recentFile: string,
  asked: Pick<NewJob, 'title' | 'sizes'> & Partial<NewJob>,
) {
  inBook(path, recentFile, (service) =>
    apply(service, (records) =>
      madeOf(newJob(records, { recipe: 'H1', writings: [], by: 'us', on: paperDay, ...asked })),
    ),
  );
}

function inBook(path: string, recentFile: string, write: (service: Service) => void): void {
  const opened = openService({
    path,
    recentFile,
    today: () => paperDay,
    onNews: () => undefined,
    log: () => undefined,
  });
  if (!opened.ok) throw new Error(opened.fault);
  write(opened.value);
  opened.value.close();
}

function writeLibraryJob(service: Service): void {
  apply(service, (records) =>
    madeOf(
      newJob(records, {
        title: 'Reading room',
        client: 'Brackenlume Library',
        contact: 'Hesper Dunn, librarian',
        site: 'Oak shelf under the north window',
        audience: 'Readers of all ages',
        animals: 'Small frogs',
        recipe: 'H1',
        sizes: [{ tank: 'T05', count: 1 }],
        writings: [{ line: 'soil_rise', text: '0 mm' }],
        by: 'client',
        handover: '2027-06-04',
        on: paperDay,
      }),
    ),
  );
  issue(service, 'J02');
  const lighter = [
    { line: 'litter', text: '20 mm' },
    { line: 'kit', text: 'basic' },
  ];
  apply(service, (records) => setValues(records, { job: 'J02', writings: lighter, by: 'client' }));
  issue(service, 'J02');
  apply(service, (records) => recordDeposit(records, { job: 'J02', coins: 50_000, on: paperDay }));
}

function writeSchoolJob(service: Service): void {
  apply(service, (records) =>
    madeOf(
      newJob(records, {
        title: 'Two classrooms and a hall',
        client: 'Withy Bank primary school',
        contact: 'The bursar',
        audience: 'School children',
        recipe: 'H1',
        sizes: [
          { tank: 'T03', count: 2 },
          { tank: 'T07', count: 1 },
          { tank: 'T08', count: 1 },
        ],
        writings: [],
        by: 'client',
        handover: '2027-07-16',
        on: paperDay,
      }),
    ),
  );
  issue(service, 'J03');
  apply(service, (records) => recordDeposit(records, { job: 'J03', coins: 200_000, on: paperDay }));
}

/**
 * Seven sizes and forty one-off lines: a quote of several pages. The job is closed, so that no shopping run includes
 * it.
 */
function writeLongJob(service: Service): void {
  const tanks = ['T01', 'T02', 'T03', 'T04', 'T05', 'T06', 'T07'];
  apply(service, (records) => {
    const sizes = tanks.map((tank) => ({ tank, count: 1 }));
    return madeOf(
      newJob(records, { title: 'A wall of tanks', recipe: 'H1', sizes, writings: [], by: 'us', on: paperDay }),
    );
  });
  const lines = Array.from({ length: 40 }, (_, at) => ({
    id: `J04-line-${at + 1}`,
    job: 'J04',
    label: `Shelf board ${at + 1}`,
    group: 'hardscape',
    costCoins: 1000 + at,
    by: 'us' as const,
  }));
  apply(service, () => ({
    ok: true,
    value: { label: 'boards', added: lines.map((record) => ({ kind: 'quoteLine', record })), updated: [], removed: [] },
  }));
  issue(service, 'J04');
  apply(service, (records) => moveJob(records, 'J04', 'closed'));
}

function madeOf(made: ReturnType<typeof newJob>): Result<Change, JobFault> {
  return made.ok ? { ok: true, value: made.value.change } : made;
}

function apply(service: Service, act: (records: Records) => Result<Change, JobFault>): void {
  const { info, records } = ask(service, 'book.read', {});
  const change = act(fromRecordLists(records));
  if (!change.ok) throw new Error(sayJobFault(change.fault));
  ask(service, 'book.apply', { opening: info.opening, onRevision: info.revision, change: change.value });
}

function issue(service: Service, job: string): void {
  const { opening, revision } = ask(service, 'book.info', {});
  ask(service, 'quote.issue', { opening, onRevision: revision, job });
}

function ask<C extends Channel>(service: Service, channel: C, input: Input<C>): Output<C> {
  const answer = service.call(channel, input);
  if (!answer.ok) throw new Error(answer.fault.says);
  return channels[channel].output.parse(JSON.parse(JSON.stringify(answer.value))) as Output<C>;
}
