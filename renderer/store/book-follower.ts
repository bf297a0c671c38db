import { signal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Bridge, BridgeNews } from '#renderer/bridge.ts';
import type { BookInfo, Refusal } from '#shared-calc/contract/channels.ts';
import { fromRecordLists } from '#shared-calc/contract/record-lists.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { bookReader, type BookReader } from './book-reader.ts';
import type { Clock } from './clock.ts';
import { fits, isDone, rebase } from './pending-edits.ts';
import { editsIn, sendStep, type Written, type WriteStep } from './write-steps.ts';

/** What takes longer is said. */
const SLOW_MS = 1000;

export interface FollowerParts {
  readonly bridge: Bridge;
  readonly clock: Clock;
  readonly first: { readonly info: BookInfo; readonly records: Records };
  /** The page's records: the book as it was last known, with the edits still on their way. */
  readonly records: Signal<Records>;
  readonly steps: Signal<readonly WriteStep[]>;
  readonly say: (words: string) => void;
  readonly refuse: (sentence: string) => void;
}

/** Sends queued edits in order and rebases local records on the server's revision. */
export interface BookFollower {
  readonly info: ReadonlySignal<BookInfo>;
  readonly reached: ReadonlySignal<boolean>;
  readonly slow: ReadonlySignal<boolean>;
  /** Increments when the queue is empty. */
  readonly settled: ReadonlySignal<number>;
  readonly put: (step: WriteStep) => void;
  readonly hear: (news: Exclude<BridgeNews, { readonly is: 'do' | 'go' }>) => void;
}

/** What is known of the book. */
interface Desk extends FollowerParts {
  readonly book: BookReader;
  readonly info: Signal<BookInfo>;
  readonly slow: Signal<boolean>;
  /** The book without the edits still on their way. */
  base: Records;
  /** The last revision that was told of. */
  told: number;
  mustRead: boolean;
  /** A step that was refused once although it fits. */
  tried: WriteStep | undefined;
}

export function bookFollower(parts: FollowerParts): BookFollower {
  const { first, steps } = parts;
  const reached = signal(true);
  const settled = signal(0);
  const desk: Desk = {
    ...parts,
    book: bookReader(parts.bridge, parts.clock, reached),
    info: signal(first.info),
    slow: signal(false),
    base: first.records,
    told: first.info.revision,
    mustRead: false,
    tried: undefined,
  };
  let busy = false;
  async function drain(): Promise<void> {
    if (busy) return;
    busy = true;
    for (let work = nextWork(desk); work; work = nextWork(desk)) await work;
    busy = false;
    desk.slow.value = false;
    settled.value += 1;
  }
  return {
    info: desk.info,
    reached,
    slow: desk.slow,
    settled,
    put: (step) => {
      steps.value = [...steps.peek(), step];
      void drain();
    },
    hear: (news) => {
      if (news.is === 'away') reached.value = false;
      else if (news.is === 'back') comeBack(desk);
      else if (news.is === 'opened' || news.opening !== desk.info.peek().opening) desk.mustRead = true;
      else desk.told = Math.max(desk.told, news.revision);
      if (news.is !== 'away') void drain();
    },
  };
}

/** After a reconnect the page shows that it is saving until the queued edits are confirmed. */
function comeBack({ slow, steps, book }: Desk): void {
  slow.value = steps.peek().length > 0;
  book.wake();
}

function nextWork(desk: Desk): Promise<void> | undefined {
  const [step] = desk.steps.peek();
  if (desk.mustRead) return readAnew(desk);
  if (step) return doStep(desk, step);
  return desk.told > desk.info.peek().revision ? catchUp(desk) : undefined;
}

async function doStep(desk: Desk, step: WriteStep): Promise<void> {
  const stop = desk.clock.after(SLOW_MS, () => (desk.slow.value = true));
  const done = await sendStep(desk.bridge, step, desk.info.peek());
  stop();
  desk.slow.value = false;
  if (done.ok) take(desk, step, done.value);
  else await giveUp(desk, step, done.fault);
}

function take(desk: Desk, step: WriteStep, written: Written): void {
  const own = step.act === 'apply' ? step.change : written.change;
  const changes = [...written.others.map((entry) => entry.change), ...(own ? [own] : [])];
  desk.base = changes.reduce<Records>(applyChange, desk.base);
  desk.info.value = written.info;
  drop(desk, step);
  if (step.act !== 'apply' || written.others.length > 0) rework(desk);
  if (step.act === 'undo' || step.act === 'redo') desk.say(stepWords(step.act, written.change));
  if ('told' in step) step.told(ok(written));
}

/**
 * A step that was not done. Where the page must read again the book may have taken an edit all the same, or not
 * have answered at all: an edit that still fits is sent once more.
 */
async function giveUp(desk: Desk, step: WriteStep, { says, readAgain }: Refusal): Promise<void> {
  if (step.act !== 'apply') {
    drop(desk, step);
    desk.refuse(says);
    if ('told' in step) step.told(failed(says));
    if (readAgain) await readAnew(desk);
    return;
  }
  const fitted = desk.steps.peek().includes(step);
  if (readAgain) await readAnew(desk, says);
  if (!fitted || !desk.steps.peek().includes(step)) return;
  if (readAgain && desk.tried !== step && fits(desk.base, step.change)) {
    desk.tried = step;
    return;
  }
  drop(desk, step);
  desk.refuse(says);
  rework(desk);
}

async function readAnew(desk: Desk, because?: string): Promise<void> {
  const { path } = desk.info.peek();
  const read = await desk.book.read();
  desk.mustRead = false;
  desk.base = fromRecordLists(read.records);
  desk.info.value = read.info;
  desk.told = read.info.revision;
  if (read.info.path !== path) loseAll(desk);
  for (const step of desk.steps.peek()) {
    if (step.act !== 'apply' || !isDone(desk.base, step.change)) break;
    drop(desk, step);
  }
  rework(desk, because);
}

async function catchUp(desk: Desk): Promise<void> {
  const { opening, revision } = desk.info.peek();
  const since = await desk.bridge.call('book.since', { opening, revision });
  if (!since.ok) {
    desk.mustRead = true;
    return;
  }
  desk.base = since.value.entries.reduce<Records>((so, entry) => applyChange(so, entry.change), desk.base);
  desk.info.value = since.value.info;
  desk.told = since.value.info.revision;
  rework(desk);
}

/** Makes the edits still on their way once more; those that no longer fit are told. */
function rework(desk: Desk, because = 'Changed elsewhere meanwhile.'): void {
  const now = rebase(desk.base, editsIn(desk.steps.peek()));
  desk.records.value = now.records;
  if (now.lost.length === 0) return;
  desk.steps.value = desk.steps.peek().filter((step) => step.act !== 'apply' || !now.lost.includes(step.change));
  desk.refuse(`${because} Not kept: ${labelsOf(now.lost)}.`);
}

function loseAll(desk: Desk): void {
  const lost = editsIn(desk.steps.peek());
  for (const step of desk.steps.peek()) if ('told' in step) step.told(failed(otherBook));
  desk.steps.value = [];
  if (lost.length > 0) desk.refuse(`${otherBook} Not kept: ${labelsOf(lost)}.`);
}

function drop(desk: Desk, step: WriteStep): void {
  desk.steps.value = desk.steps.peek().filter((each) => each !== step);
}

const otherBook = 'Another book has been opened meanwhile.';

function labelsOf(changes: readonly Change[]): string {
  return changes.map((change) => change.label).join('; ');
}

function stepWords(act: 'undo' | 'redo', change: Change | undefined): string {
  if (!change) return `There is nothing to ${act}.`;
  return `${act === 'undo' ? 'Undone' : 'Done again'}: ${change.label}`;
}
