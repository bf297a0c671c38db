import { closeSync, fdatasyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { measure, ms, ratio, type Told } from './measure.ts';

const JOBS = 500;
const today = '2027-03-08';

/** Opening a book of 500 jobs, and one durable edit against a bare flush of the same disk. */
export function benchBook(): readonly Told[] {
  const folder = mkdtempSync(path.join(tmpdir(), 'loamwright-bench-'));
  try {
    const file = path.join(folder, 'many.loamwright');
    const made = makeDemoBook(file, { today, backups: false });
    if (!made.ok) throw new Error(`no book: ${made.fault.kind}`);
    fill(made.value);
    const edit = measure({ times: 60 }, (turn) => {
      rename(made.value, turn);
    });
    made.value.close();
    const flush = bareFlush(folder);
    const open = measure({ times: 9, warm: 1 }, () => {
      const opened = openBook(file, { today, backups: false });
      if (opened.ok) {
        opened.value.records();
        opened.value.close();
      }
    });
    return [
      { what: `open a book of ${JOBS} jobs and read it`, took: ms(open.median), floor: '', ratio: '', must: '300 ms' },
      {
        what: 'one durable edit',
        took: ms(edit.median),
        floor: `a bare flush ${ms(flush)}`,
        ratio: ratio(edit.median / flush),
        must: 'flush + 5 ms',
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function fill(book: Book): void {
  const first = [...book.records().job.values()][0];
  if (!first) throw new Error('the demo has no job');
  const jobs = Array.from({ length: JOBS }, (_, at): Job => ({ ...first, id: `B${at}`, title: `Job ${at}` }));
  const done = book.apply(
    { ...emptyChange('many jobs'), added: jobs.map((record) => ({ kind: 'job' as const, record })) },
    book.revision(),
  );
  if (!done.ok) throw new Error(`not written: ${done.fault.kind}`);
}

function rename(book: Book, turn: number): void {
  const from = book.records().job.get(`B${turn}`);
  if (!from) throw new Error(`no job B${turn}`);
  const to = { ...from, title: `Renamed ${turn}` };
  const done = book.apply({ ...emptyChange('rename'), updated: [{ kind: 'job', from, to }] }, book.revision());
  if (!done.ok) throw new Error(`not written: ${done.fault.kind}`);
}

function bareFlush(folder: string): number {
  const file = openSync(path.join(folder, 'flush'), 'w');
  const took = measure({ times: 60 }, (turn) => {
    writeSync(file, Buffer.alloc(4096, turn), 0, 4096, turn * 4096);
    fdatasyncSync(file);
  });
  closeSync(file);
  return took.median;
}
