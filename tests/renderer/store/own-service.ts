import type { Bridge, BridgeNews } from '#renderer/bridge.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { BookInfo, Entry, Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { workedJob } from '#tests/worked-job.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { applyChange, invertChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { fits } from '#renderer/store/pending-edits.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';

/** A book in memory behind the page's own bridge: it applies, refuses, undoes and notifies like the real one. */
export interface OwnService {
  readonly bridge: Bridge;
  readonly records: () => Records;
  readonly entries: () => readonly Entry[];
  /** Another window writes. */
  readonly elsewhere: (change: Change) => void;
  readonly die: () => void;
  /** Answers again; with `anew`, as a restarted service that has reopened the same book. */
  readonly comeBack: (how?: { readonly anew: boolean }) => void;
  /** Another book is opened. */
  readonly openOther: (records: Records) => void;
  /** The prices of the next confirmations are wrong by this many coins. */
  readonly misprice: (coins: number) => void;
}

interface State {
  records: Records;
  opening: number;
  path: string;
  entries: Entry[];
  past: Change[];
  future: Change[];
  dead: boolean;
  off: number;
}

const away: Refusal = { says: 'Loamwright does not answer.', readAgain: true };

export function ownService(first: Records): OwnService {
  const state: State = {
    records: first,
    opening: 1,
    path: '/books/first.loamwright',
    entries: [],
    past: [],
    future: [],
    dead: false,
    off: 0,
  };
  const listeners = new Set<(news: BridgeNews) => void>();
  const tell = (news: BridgeNews) => {
    for (const listener of listeners) listener(news);
  };
  const tellWritten = () => tell({ is: 'written', opening: String(state.opening), revision: state.entries.length });
  return {
    bridge: bridgeTo(state, listeners, tellWritten),
    records: () => state.records,
    entries: () => state.entries,
    elsewhere: (change) => {
      write(state, change);
      tellWritten();
    },
    die: () => {
      state.dead = true;
      tell({ is: 'away' });
    },
    comeBack: ({ anew } = { anew: false }) => {
      state.dead = false;
      if (anew) state.opening += 1;
      tell({ is: 'back' });
      tellWritten();
    },
    openOther: (records) => {
      Object.assign(state, { records, entries: [], past: [], future: [], path: '/books/other.loamwright' });
      state.opening += 1;
      tell({ is: 'opened', opening: String(state.opening) });
    },
    misprice: (coins) => (state.off = coins),
  };
}

function bridgeTo(state: State, listeners: Set<(news: BridgeNews) => void>, tellWritten: () => void): Bridge {
  const call = async (channel: Channel, input: unknown): Promise<Result<unknown, Refusal>> => {
    await Promise.resolve();
    if (state.dead) return failed(away);
    const before = state.entries.length;
    const answer = structuredClone(
      answers[channel]?.(state, input) ?? failed({ says: `No ${channel} here.`, readAgain: false }),
    );
    if (state.entries.length > before) tellWritten();
    return answer;
  };
  return {
    desktop: undefined,
    call: call as Bridge['call'],
    onChanged: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

type Answers = { readonly [C in Channel]?: (state: State, input: unknown) => Result<unknown, Refusal> };

const answers: Answers = {
  'book.read': (state) =>
    ok({ info: infoOf(state), records: toRecordLists(state.records) } satisfies Output<'book.read'>),
  'book.info': (state) => ok(infoOf(state)),
  'book.since': (state, input) => {
    const { opening, revision } = input as Input<'book.since'>;
    if (opening !== String(state.opening)) return failed({ says: 'Another book.', readAgain: true });
    return ok({ info: infoOf(state), entries: state.entries.slice(revision) });
  },
  'book.apply': (state, input) => {
    const { change } = input as Input<'book.apply'>;
    return writing(state, input as Input<'book.undo'>, () => {
      if (!fits(state.records, change))
        return failed({ says: 'Changed in another window meanwhile.', readAgain: true });
      if (change.label.includes('never')) return failed({ says: 'The book refuses this.', readAgain: false });
      state.past.push(change);
      state.future = [];
      return ok(change);
    });
  },
  'book.undo': (state, input) =>
    writing(state, input as Input<'book.undo'>, () => {
      const last = state.past.pop();
      if (last) state.future.push(last);
      return ok(last && invertChange(last));
    }),
  'book.redo': (state, input) =>
    writing(state, input as Input<'book.redo'>, () => {
      const next = state.future.pop();
      if (next) state.past.push(next);
      return ok(next);
    }),
  'bench.confirm': (state, input) => {
    const { job: id } = input as Input<'bench.confirm'>;
    const job = state.records.job.get(id);
    if (!job) return failed({ says: `There is no job ${id}.`, readAgain: true });
    const open = workedJob(state.records, job, DEMO_DAY);
    const columns = keysOf(open.sheet).map((column) => {
      const sums = orderSums(open.bench, [column], open.pricing);
      if (!sums.ok) return { column, fault: sums.fault.kind };
      const { costCoins, netCoins, grossCoins, depositCoins, hours } = sums.value.quote;
      return { column, sums: { costCoins, netCoins, grossCoins: grossCoins + state.off, depositCoins, hours } };
    });
    return ok({ revision: state.entries.length, columns } satisfies Output<'bench.confirm'>);
  },
};

function writing(
  state: State,
  { opening, onRevision }: Input<'book.undo'>,
  act: () => Result<Change | undefined, Refusal>,
): Result<unknown, Refusal> {
  if (opening !== String(state.opening))
    return failed({ says: 'Another book has been opened meanwhile.', readAgain: true });
  const others = state.entries.slice(onRevision);
  const done = act();
  if (!done.ok) return done;
  if (done.value) write(state, done.value);
  return ok({ info: infoOf(state), others, ...(done.value && { change: done.value }) });
}

function write(state: State, change: Change): void {
  state.records = applyChange(state.records, change);
  state.entries.push({ revision: state.entries.length + 1, change });
}

function infoOf({ opening, path, entries, past, future }: State): BookInfo {
  const undo = past.at(-1)?.label;
  const redo = future.at(-1)?.label;
  return {
    opening: String(opening),
    name: path.slice(path.lastIndexOf('/') + 1),
    path,
    revision: entries.length,
    savedAt: '2027-03-08T14:02:00.000Z',
    ...(undo !== undefined && { undo }),
    ...(redo !== undefined && { redo }),
    notices: [],
    today: DEMO_DAY,
  };
}
