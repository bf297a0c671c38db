import { isUnsent } from '#shared-calc/jobs/issue-quote.ts';
import type { EditFault } from '#shared-calc/records/book-fault.ts';
import { type Change, emptyChange, invertChange, isEmptyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { BookState, Present } from './book-state.ts';
import { sumAll } from './checksums.ts';
import { checkChange } from './check-change.ts';
import { issuedIn } from './check-issued.ts';
import type { JournalKind, Step } from './history.ts';
import { namesIn } from './names-in.ts';
import { storing } from './storage-fault.ts';

/** The edits of a book: each is one immediate transaction and adds one row to the journal. */
export interface Edits {
  /** Writes the records a new book starts with; undo does not go back before it. */
  readonly begin: (change: Change) => Result<Step, EditFault>;
  readonly apply: (change: Change, onRevision: number) => Result<Step, EditFault>;
  /** An edit computed from the current book, inside the transaction. */
  readonly applyTo: (work: (records: Records) => Change) => Result<Step, EditFault>;
  /** Takes the book as it stands in the file: sums it anew, and lets the journal count from here. */
  readonly accept: () => Result<Step, EditFault>;
  readonly undo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
  readonly redo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
}

/** What to write, computed from the current book. */
interface Wanted {
  readonly kind: JournalKind;
  readonly change: Change;
}
type Want<Nothing> = (present: Present) => Result<Wanted | Nothing, EditFault>;

export function editsOf(state: BookState, now: () => string): Edits {
  return {
    begin: (change) => edit<never>(state, now, () => ok({ kind: 'begin', change })),
    apply: (change, onRevision) => edit<never>(state, now, (present) => wantEdit(present, change, onRevision)),
    applyTo: (work) => edit<never>(state, now, ({ records }) => ok({ kind: 'do', change: work(records) })),
    accept: () => edit<never>(state, now, () => ok({ kind: 'accept', change: emptyChange('taken as it stands') })),
    undo: (onRevision) => edit(state, now, (present) => wantUndo(state, present, onRevision)),
    redo: (onRevision) => edit(state, now, (present) => wantRedo(state, present, onRevision)),
  };
}

function edit<Nothing extends string>(
  state: BookState,
  now: () => string,
  want: Want<Nothing>,
): Result<Step | Nothing, EditFault> {
  let next: Present | undefined;
  const run = state.db.transaction((): Result<Step | Nothing, EditFault> => {
    const present = state.present();
    if (!present.ok) return present;
    const wanted = want(present.value);
    if (!wanted.ok) return wanted;
    if (typeof wanted.value === 'string') return ok(wanted.value);
    const written = write(state, present.value, wanted.value, now());
    if (!written.ok) return written;
    next = written.value;
    return ok({ revision: next.revision, label: wanted.value.change.label });
  });
  const how = state.gone();
  if (how) return failed({ kind: 'gone', how });
  const result = storing(() => run.immediate());
  // Updates the cached state only after the commit.
  if (result.ok && next) state.moveOn(next);
  return result;
}

function write(state: BookState, present: Present, { kind, change }: Wanted, at: string): Result<Present, EditFault> {
  const checked = checkChange(present.records, change, state.numbers);
  if (!checked.ok) return checked;
  if (kind === 'do' && isEmptyChange(checked.value.change)) return ok(present);
  const revision = present.revision + 1;
  state.write(checked.value.change);
  for (const quote of issuedIn(checked.value.change)) state.numbers.use(quote);
  const lasting = isLasting({ kind, change: checked.value.change });
  state.journal.append({ revision, at, kind, lasting, change: checked.value.change });
  if (kind === 'accept') sumAll(state.db);
  return ok({ records: checked.value.records, revision, altered: kind === 'accept' ? [] : present.altered });
}

/** Whether undo stops here: at what went out of the house, and where the journal begins to count. */
function isLasting({ kind, change }: Wanted): boolean {
  if (kind !== 'do') return kind === 'begin' || kind === 'accept';
  return change.added.some((each) => each.kind === 'order') || issuedIn(change).some((quote) => !isUnsent(quote));
}

function wantEdit({ revision }: Present, change: Change, onRevision: number): Result<Wanted, EditFault> {
  return onRevision > revision ? failed({ kind: 'ahead', onRevision, revision }) : ok({ kind: 'do', change });
}

function wantUndo(state: BookState, present: Present, onRevision?: number): Result<Wanted | 'nothing', EditFault> {
  const { past, wall } = state.history();
  const last = past.at(-1);
  if (!last && wall?.kind === 'do') return failed({ kind: 'lasting', label: wall.label });
  if (!last) return ok('nothing');
  const change = state.journal.change(last.revision);
  return change.ok ? wantStep('undo', invertChange(change.value), present, onRevision) : change;
}

function wantRedo(state: BookState, present: Present, onRevision?: number): Result<Wanted | 'nothing', EditFault> {
  const next = state.history().future.at(-1);
  if (!next) return ok('nothing');
  const change = state.journal.change(next.revision);
  return change.ok ? wantStep('redo', change.value, present, onRevision) : change;
}

/** Rejects undo and redo if the client's revision is stale. */
function wantStep(
  kind: JournalKind,
  change: Change,
  { revision }: Present,
  onRevision?: number,
): Result<Wanted, EditFault> {
  if (onRevision === undefined || onRevision === revision) return ok({ kind, change });
  return failed({ kind: 'changed-elsewhere', records: namesIn(change) });
}
