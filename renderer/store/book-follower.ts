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

/** A save that takes longer than this is shown as slow. */
const SLOW_MS = 1000;

export interface FollowerParts {
  readonly bridge: Bridge;
  readonly clock: Clock;
  readonly first: { readonly info: BookInfo; readonly records: Records };
  /** The page's records: the last known book plus the pending edits. */
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

/** State of the follower. */
interface FollowerState extends FollowerParts {
  readonly book: BookReader;
  readonly info: Signal<BookInfo>;
  readonly slow: Signal<boolean>;
  /** The book without the pending edits. */
  base: Records;
  /** The last revision that was announced. */
  announced: number;
  mustRead: boolean;
  /** A step that was refused once although it still fits. */
  tried: WriteStep | undefined;
}

export function bookFollower(parts: FollowerParts): BookFollower {
  const { first, steps } = parts;
  const reached = signal(true);
  const settled = signal(0);
  const state: FollowerState = {
    ...parts,
    book: bookReader(parts.bridge, parts.clock, reached),
    info: signal(first.info),
    slow: signal(false),
    base: first.records,
    announced: first.info.revision,
    mustRead: false,
    tried: undefined,
  };
  let busy = false;
  async function drain(): Promise<void> {
    if (busy) return;
    busy = true;
    for (let work = nextWork(state); work; work = nextWork(state)) await work;
    busy = false;
    state.slow.value = false;
    settled.value += 1;
  }
  return {
    info: state.info,
    reached,
    slow: state.slow,
    settled,
    put: (step) => {
      steps.value = [...steps.peek(), step];
      void drain();
    },
    hear: (news) => {
      if (news.is === 'away') reached.value = false;
      else if (news.is === 'back') comeBack(state);
      else if (news.is === 'gone' || news.is === 'told') void readInfo(state, news.is === 'told');
      else if (news.is === 'opened' || news.opening !== state.info.peek().opening) state.mustRead = true;
      else state.announced = Math.max(state.announced, news.revision);
      if (news.is !== 'away') void drain();
    },
  };
}

/** What is said of the file has changed; of one more notice the page tells at once. */
async function readInfo({ bridge, info, refuse }: FollowerState, isTold: boolean): Promise<void> {
  const read = await bridge.call('book.info', {});
  if (!read.ok) return;
  info.value = read.value;
  const last = read.value.notices.at(-1);
  if (isTold && last !== undefined) refuse(last);
}

/** After a reconnect the page shows that it is saving until the queued edits are confirmed. */
function comeBack({ slow, steps, book }: FollowerState): void {
  slow.value = steps.peek().length > 0;
  book.wake();
}

function nextWork(state: FollowerState): Promise<void> | undefined {
  const [step] = state.steps.peek();
  if (state.mustRead) return readAnew(state);
  if (step) return doStep(state, step);
  return state.announced > state.info.peek().revision ? catchUp(state) : undefined;
}

async function doStep(state: FollowerState, step: WriteStep): Promise<void> {
  const stop = state.clock.after(SLOW_MS, () => (state.slow.value = true));
  const done = await sendStep(state.bridge, step, state.info.peek());
  stop();
  state.slow.value = false;
  if (done.ok) take(state, step, done.value);
  else await giveUp(state, step, done.fault);
}

function take(state: FollowerState, step: WriteStep, written: Written): void {
  const own = step.act === 'apply' ? step.change : written.change;
  const changes = [...written.others.map((entry) => entry.change), ...(own ? [own] : [])];
  state.base = changes.reduce<Records>(applyChange, state.base);
  state.info.value = written.info;
  drop(state, step);
  if (step.act !== 'apply' || written.others.length > 0) rework(state);
  if (step.act === 'undo' || step.act === 'redo') state.say(stepWords(step.act, written.change));
  if ('told' in step) step.told(ok(written));
}

/**
 * Handles a step that failed. If the page must read again, the book may have stored the edit all the same, or may
 * not have answered: an edit that still fits is sent once more.
 */
async function giveUp(state: FollowerState, step: WriteStep, { says, readAgain }: Refusal): Promise<void> {
  if (step.act !== 'apply') {
    drop(state, step);
    state.refuse(says);
    if ('told' in step) step.told(failed(says));
    if (readAgain) await readAnew(state);
    return;
  }
  const fitted = state.steps.peek().includes(step);
  if (readAgain) await readAnew(state, says);
  if (!fitted || !state.steps.peek().includes(step)) return;
  if (readAgain && state.tried !== step && fits(state.base, step.change)) {
    state.tried = step;
    return;
  }
  drop(state, step);
  state.refuse(`${says} Not kept: ${step.change.label}.`);
  rework(state);
}

async function readAnew(state: FollowerState, because?: string): Promise<void> {
  const { path } = state.info.peek();
  const read = await state.book.read();
  state.mustRead = false;
  state.base = fromRecordLists(read.records);
  state.info.value = read.info;
  state.announced = read.info.revision;
  if (read.info.path !== path) loseAll(state);
  for (const step of state.steps.peek()) {
    if (step.act !== 'apply' || !isDone(state.base, step.change)) break;
    drop(state, step);
  }
  rework(state, because);
}

async function catchUp(state: FollowerState): Promise<void> {
  const { opening, revision } = state.info.peek();
  const since = await state.bridge.call('book.since', { opening, revision });
  if (!since.ok) {
    state.mustRead = true;
    return;
  }
  state.base = since.value.entries.reduce<Records>((so, entry) => applyChange(so, entry.change), state.base);
  state.info.value = since.value.info;
  state.announced = since.value.info.revision;
  rework(state);
}

/** Applies the pending edits again; those that no longer fit are announced. */
function rework(state: FollowerState, because = 'Changed elsewhere meanwhile.'): void {
  const now = rebase(state.base, editsIn(state.steps.peek()));
  state.records.value = now.records;
  if (now.lost.length === 0) return;
  state.steps.value = state.steps.peek().filter((step) => step.act !== 'apply' || !now.lost.includes(step.change));
  state.refuse(`${because} Not kept: ${labelsOf(now.lost)}.`);
}

function loseAll(state: FollowerState): void {
  const lost = editsIn(state.steps.peek());
  for (const step of state.steps.peek()) if ('told' in step) step.told(failed(otherBook));
  state.steps.value = [];
  if (lost.length > 0) state.refuse(`${otherBook} Not kept: ${labelsOf(lost)}.`);
}

function drop(state: FollowerState, step: WriteStep): void {
  state.steps.value = state.steps.peek().filter((each) => each !== step);
}

const otherBook = 'Another book has been opened meanwhile.';

function labelsOf(changes: readonly Change[]): string {
  return changes.map((change) => change.label).join('; ');
}

function stepWords(act: 'undo' | 'redo', change: Change | undefined): string {
  if (!change) return `There is nothing to ${act}.`;
  return `${act === 'undo' ? 'Undone' : 'Done again'}: ${change.label}`;
}
