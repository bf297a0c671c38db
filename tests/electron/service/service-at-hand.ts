import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

import { openService } from '#electron/service/open-service.ts';
import type { Service } from '#electron/service/open-service.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import { channels } from '#shared-calc/contract/channels.ts';
import type { BookInfo, Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import type { News } from '#shared-calc/contract/news.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { fromRecordLists } from '#shared-calc/contract/record-lists.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

export const today = '2027-03-10';

export interface AtHand {
  readonly service: Service;
  readonly news: readonly News[];
  readonly log: readonly string[];
  readonly path: string;
  readonly folder: string;
}

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The demo workshop's book in its own folder. */
export function bookAtHand(): string {
  const path = join(temporaryFolder(), 'Workshop.loamwright');
  writeDemoBook(path, today);
  return path;
}

/** A service over a demo book, or over the book at `path`, which is created if missing. */
export function serviceAtHand(path = bookAtHand()): AtHand {
  const news: News[] = [];
  const log: string[] = [];
  const folder = join(path, '..');
  const opened = openService({
    path,
    today: () => today,
    onNews: (each) => news.push(each),
    log: (text) => log.push(text),
    recentFile: join(folder, 'recent.json'),
  });
  if (!opened.ok) throw new Error(opened.fault);
  onTestFinished(opened.value.close);
  return { service: opened.value, news, log, path, folder };
}

/** The answer of a channel, checked against the contract. */
export function ask<C extends Channel>({ service }: Pick<AtHand, 'service'>, channel: C, input: Input<C>): Output<C> {
  const answer = service.call(channel, input);
  if (!answer.ok) throw new Error(answer.fault.says);
  return channels[channel].output.parse(JSON.parse(JSON.stringify(answer.value))) as Output<C>;
}

/** The refusal of a channel. */
export function refused({ service }: Pick<AtHand, 'service'>, channel: Channel, input: unknown): Refusal | undefined {
  const answer = service.call(channel, input);
  return answer.ok ? undefined : answer.fault;
}

export function recordsOf(at: Pick<AtHand, 'service'>): Records {
  return fromRecordLists(ask(at, 'book.read', {}).records);
}

/** The state of a page that has just read the book. */
export function standing(at: Pick<AtHand, 'service'>): Pick<BookInfo, 'opening'> & { readonly onRevision: number } {
  const { opening, revision } = ask(at, 'book.info', {});
  return { opening, onRevision: revision };
}

/** Gives the demo's job another title. */
export function retitled(at: Pick<AtHand, 'service'>, title: string): Change {
  const job = jobOf(at);
  return {
    label: `J01 is ${title}`,
    added: [],
    updated: [{ kind: 'job', from: job, to: { ...job, title } }],
    removed: [],
  };
}

/** Adds one more job. */
export function addedJob(at: Pick<AtHand, 'service'>, id: string): Change {
  return { label: `job ${id}`, added: [{ kind: 'job', record: { ...jobOf(at), id } }], updated: [], removed: [] };
}

export function jobOf(at: Pick<AtHand, 'service'>, id = 'J01'): Job {
  const job = recordsOf(at).job.get(id);
  if (!job) throw new Error(`no job ${id}`);
  return job;
}
