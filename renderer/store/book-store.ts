import { allLines } from '#shared-calc/jobs/worked-job.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Bridge, BridgeNews } from '#renderer/bridge.ts';
import type { QuietLineView } from '#renderer/frame/frame-view.ts';
import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import type { BookInfo } from '#shared-calc/contract/channels.ts';
import { fromRecordLists } from '#shared-calc/contract/record-lists.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { applyChange, isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { lineById } from '#shared-calc/recipe/lines-of.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { bookFollower, type BookFollower } from './book-follower.ts';
import type { Clock } from './clock.ts';
import { spokenLine, type Said, type Speaking, type SpokenLine } from './spoken-line.ts';
import { editsIn, type Written, type WriteStep } from './write-steps.ts';

/** A request to the page from the desktop menu or another part of the program. */
export type PageAsk = Extract<News, { readonly is: 'do' | 'go' }>;

/** The page's copy of the book. An edit applies at once and goes to the service in order. */
export interface BookStore extends Omit<Speaking, 'refuse'> {
  /** Shows why something was not done, and returns the same sentence. */
  readonly refuse: (sentence: string) => string;
  readonly records: ReadonlySignal<Records>;
  /** Everything derived from the records today: one derivation for the whole page. */
  readonly derived: ReadonlySignal<Derived>;
  readonly info: ReadonlySignal<BookInfo>;
  /** Number of edits that the book has not stored yet. */
  readonly waiting: ReadonlySignal<number>;
  readonly reached: ReadonlySignal<boolean>;
  /** Increments when the outgoing queue is empty. */
  readonly settled: ReadonlySignal<number>;
  readonly line: ReadonlySignal<QuietLineView>;
  /**
   * Runs one of the core's acts. Returns the reason if it is refused, which is shown too; `then` receives the result.
   */
  readonly doAct: <N extends ActName>(
    name: N,
    input: ActInputs[N],
    then?: (change: Change) => void,
  ) => string | undefined;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly issue: (job: string, reason?: Reason) => Promise<Result<Written, string>>;
  readonly restore: (file: string) => Promise<Result<Written, string>>;
  /** Channels that read, and channels that work on files. */
  readonly call: Bridge['call'];
  readonly desktop: Bridge['desktop'];
  readonly onAsk: (listener: (ask: PageAsk) => void) => () => void;
  readonly close: () => void;
}

export interface BookParts {
  readonly bridge: Bridge;
  readonly clock: Clock;
  readonly first: { readonly info: BookInfo; readonly records: Records };
}

/** Opens the page's book from the service's first answer. */
export function openBookStore({ bridge, clock, first }: BookParts): BookStore {
  const spoken = spokenLine(firstSaid(first.info), clock);
  const { speaking, clear } = spoken;
  const records = signal(first.records);
  const steps = signal<readonly WriteStep[]>([]);
  const follower = bookFollower({ bridge, clock, first, records, steps, say: speaking.say, refuse: speaking.warn });
  const waiting = computed(() => editsIn(steps.value).length);
  const { info, reached } = follower;
  const derived = derivedFrom(records, info);
  const putBack = puttingBack(bridge, speaking.refuse);
  const line = computed<QuietLineView>(() => ({
    saved: savedNow(follower, waiting.value),
    ...troubleOf({ reached: reached.value, info: info.value }, putBack),
    ...stepsBack(info.value, editsIn(steps.value)),
    ...wordsOf(spoken),
  }));
  const asks = new Set<(ask: PageAsk) => void>();
  const apply = (change: Change) => {
    if (isEmptyChange(change)) return;
    records.value = applyChange(records.peek(), change);
    clear();
    follower.put({ act: 'apply', change });
  };
  return {
    records,
    derived,
    info,
    waiting,
    reached,
    settled: follower.settled,
    line,
    doAct: (name, input, then) => {
      const done = inWords(actTable[name].run(derived.peek(), input), derived.peek(), input);
      return actOn(done, (change) => [apply(change), then?.(change)], speaking.refuse);
    },
    undo: () => follower.put({ act: 'undo' }),
    redo: () => follower.put({ act: 'redo' }),
    issue: (job, reason = {}) => new Promise((told) => follower.put({ act: 'issue', job, reason, told })),
    restore: (file) => new Promise((told) => follower.put({ act: 'restore', file, told })),
    call: bridge.call,
    desktop: bridge.desktop,
    ...speaking,
    refuse: (sentence) => {
      speaking.refuse(sentence);
      return sentence;
    },
    onAsk: (listener) => asking(asks, listener),
    close: bridge.onChanged((news) => hear(news, asks, follower)),
  };
}

function puttingBack({ call }: Bridge, refuse: (sentence: string) => void): () => void {
  return () => void call('file.putBack', {}).then((done) => !done.ok && refuse(done.fault.says));
}

function wordsOf({ said, moved }: Pick<SpokenLine, 'said' | 'moved'>): Pick<QuietLineView, 'said' | 'moved'> {
  return { ...(said.value && { said: said.value }), ...(moved.value !== '' && { moved: moved.value }) };
}

/** Nothing is kept while the service is away or the file of the book has gone. */
function troubleOf(
  { reached, info: { gone } }: { readonly reached: boolean; readonly info: BookInfo },
  putBack: () => void,
): Pick<QuietLineView, 'trouble'> {
  if (!reached) return { trouble: { says: 'What is written now is not kept until it answers again.' } };
  if (!gone) return {};
  const label = gone.cure === 'put back' ? 'Put it back' : 'Open what is there';
  return { trouble: { says: gone.says, act: { label, run: putBack } } };
}

function savedNow({ info, reached, slow }: BookFollower, waiting: number): QuietLineView['saved'] {
  if (info.value.looking !== undefined) return info.value.looking;
  return savedWords({ waiting, reached: reached.value, slow: slow.value, savedAt: info.value.savedAt });
}

function derivedFrom(
  records: ReadonlySignal<Records>,
  info: ReadonlySignal<Pick<BookInfo, 'today'>>,
): ReadonlySignal<Derived> {
  const today = computed(() => info.value.today);
  let last = derive(records.peek(), today.peek());
  return computed(() => (last = last.update(records.value, today.value)));
}

function asking(asks: Set<(ask: PageAsk) => void>, listener: (ask: PageAsk) => void): () => void {
  asks.add(listener);
  return () => void asks.delete(listener);
}

/** Faults name lines by their labels, as the page shows them. */
function inWords(
  done: Result<Change, ActFault>,
  { records, lines, job }: Derived,
  input: unknown,
): Result<Change, string> {
  if (done.ok) return done;
  const named = new Map<string, unknown>(Object.entries(input ?? {}));
  const worked = job(String(named.get('job')));
  const recipe = lineById(records, String(named.get('line')))?.recipe ?? '';
  const known = worked ? allLines(worked) : lines(recipe);
  return failed(sayActFault(done.fault, calledByLines({ lines: known, columns: [] })));
}

function hear(news: BridgeNews, asks: ReadonlySet<(ask: PageAsk) => void>, follower: BookFollower): void {
  if (news.is === 'do' || news.is === 'go') for (const ask of asks) ask(news);
  else follower.hear(news);
}

function firstSaid({ notices: [notice] }: BookInfo): Said | undefined {
  return notice === undefined ? undefined : { words: notice, refused: true };
}

function actOn(
  done: Result<Change, string>,
  apply: (change: Change) => unknown,
  refuse: (sentence: string) => void,
): string | undefined {
  if (done.ok) apply(done.value);
  else refuse(done.fault);
  return done.ok ? undefined : done.fault;
}

/** A pending edit is the next one to be undone, and clears redo. */
function stepsBack({ undo, redo }: BookInfo, edits: readonly Change[]): Pick<QuietLineView, 'undo' | 'redo'> {
  const last = edits.at(-1)?.label ?? undo;
  return {
    ...(last !== undefined && { undo: last }),
    ...(edits.length === 0 && redo !== undefined && { redo }),
  };
}

/** Reads the book for the first time; retries until it succeeds. */
export async function readFirst(bridge: Bridge, clock: Clock): Promise<Result<BookParts['first'], string>> {
  for (let turn = 0; ; turn += 1) {
    const read = await bridge.call('book.read', {});
    if (read.ok) return ok({ info: read.value.info, records: fromRecordLists(read.value.records) });
    if (turn >= 5 || !read.fault.readAgain) return failed(read.fault.says);
    await new Promise<void>((resolve) => clock.after(500, resolve));
  }
}

/** State of saving, for the status text. */
interface Saving {
  /** Number of edits that the book has not stored yet. */
  readonly waiting: number;
  readonly reached: boolean;
  /** The last edit has been pending for more than a second. */
  readonly slow: boolean;
  /** ISO 8601 time in UTC. */
  readonly savedAt: string;
}

/** "Saved 14:02" in local time, or what is pending. */
function savedWords({ waiting, reached, slow, savedAt }: Saving): string {
  if (!reached && waiting === 0) return 'The book does not answer for the moment';
  if (!reached) return `Not saved: ${waiting === 1 ? '1 edit waits' : `${waiting} edits wait`} for the book to answer`;
  if (slow) return 'Saving';
  return `Saved ${clockTime(new Date(savedAt))}`;
}

function clockTime(time: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(time.getHours())}:${two(time.getMinutes())}`;
}
