import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { BookStore } from '#renderer/store/book-store.ts';
import { readersOf, sayBreaks, type Break } from '#renderer/store/line-breaks.ts';
import type { LineFace } from '#renderer/store/line-faces.ts';
import {
  breaksWithout,
  changeLine,
  jobsWriting,
  moveLine,
  removeLine,
  renameLine,
} from '#renderer/store/recipe-changes.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { sayWithoutUse } from '#shared-calc/words/say-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { BoundFields } from './bound-fields.tsx';
import { KindFields, NameFields, WordFields } from './line-fields.tsx';
import type { PutFields } from './put-fields.ts';
import { RoleFields } from './role-fields.tsx';
import { UseFields } from './use-fields.tsx';

interface SlipParts {
  readonly book: BookStore;
  readonly store: RecipeStore;
}

/** Everything about one line of the recipe but its rule, which is written in the list. */
export function LineSlip({ book, store }: SlipParts) {
  const face = store.faces.value.of(store.chosen.value ?? '');
  if (!face) return <aside class="slip record" aria-label="The line" id="slip" tabIndex={-1} />;
  const { line, label } = face;
  const put: PutFields = (fields) => book.act(changeLine(book.records.peek(), line, fields));
  const rename = (name: string) => {
    const refused = book.act(renameLine(book.records.peek(), line, name));
    if (refused === undefined) store.chosen.value = name.trim();
    return refused;
  };
  return (
    <aside class="slip record line-slip" aria-label={`The line ${label}`} id="slip" tabIndex={-1}>
      <header>
        <p class="where">{line.section}</p>
        <h2>{label}</h2>
      </header>
      <section>
        <NameFields line={line} put={put} rename={rename} />
        <KindFields line={line} put={put} />
        <BoundFields line={line} put={put} />
        <RoleFields line={line} put={put} records={book.records.value} />
        <UseFields line={line} put={put} book={book} />
        <WordFields line={line} put={put} />
      </section>
      <Readers store={store} line={line} />
      <LineActs book={book} store={store} face={face} />
    </aside>
  );
}

function Readers({ store, line }: { readonly store: RecipeStore; readonly line: Line }) {
  const readers = readersOf(store.lines.value, line.name);
  return (
    <section>
      <h3>Read by</h3>
      {readers.length === 0 ? (
        <p class="aside">no other line</p>
      ) : (
        <p class="readers">
          {readers.map((reader) => (
            <button key={reader.id} class="plain-act" type="button" onClick={() => (store.chosen.value = reader.name)}>
              {store.faces.value.of(reader.name)?.label}
            </button>
          ))}
        </p>
      )}
    </section>
  );
}

interface ActParts extends SlipParts {
  readonly face: LineFace;
}

function LineActs({ book, store, face: { line, label } }: ActParts) {
  const [asked, setAsked] = useState<Losses>();
  const move = (by: -1 | 1) => () => {
    book.act(moveLine(book.records.peek(), line, by));
    requestAnimationFrame(() => lineRow(line.name)?.scrollIntoView({ block: 'nearest' }));
  };
  const remove = () => {
    book.apply(removeLine(book.records.peek(), line));
    store.chosen.value = undefined;
  };
  const ask = () => {
    const now = book.records.peek();
    const losses = { breaks: breaksWithout(now, line), jobs: jobsWriting(now, line), use: line.use };
    if (losses.breaks.length === 0 && losses.jobs.length === 0 && losses.use === undefined) remove();
    else setAsked(losses);
  };
  return (
    <section>
      <div class="pair">
        <button class="button" type="button" onClick={move(-1)}>
          Move up
        </button>
        <button class="button" type="button" onClick={move(1)}>
          Move down
        </button>
        <button class="button" type="button" onClick={ask}>
          Remove
        </button>
      </div>
      {asked && <RemoveWarning losses={asked} label={label} keep={() => setAsked(undefined)} remove={remove} />}
    </section>
  );
}

function lineRow(name: string): Element | null {
  return document.querySelector(`[data-line="${CSS.escape(name)}"]`);
}

/** What a removal takes along. */
interface Losses {
  readonly breaks: readonly Break[];
  /** Those that have a value of their own in the line. */
  readonly jobs: readonly string[];
  /** What the program itself reads it for. */
  readonly use: UseName | undefined;
}

interface WarningParts {
  readonly losses: Losses;
  readonly label: string;
  readonly keep: () => void;
  readonly remove: () => void;
}

/** What would break is named before anything is. */
function RemoveWarning({ losses: { breaks, jobs, use }, label, keep, remove }: WarningParts) {
  const keepButton = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => keepButton.current?.focus(), []);
  return (
    <div class="caution" role="alert">
      {breaks.length > 0 && (
        <p>
          {breaks.length === 1 ? '1 line reads' : `${breaks.length} lines read`} {label} and could not be worked without
          it: {sayBreaks(breaks)}.
        </p>
      )}
      {use !== undefined && <p>{sayWithoutUse(use)}</p>}
      {jobs.length > 0 && <p>What is written over it in {jobs.join(', ')} goes too.</p>}
      <div class="pair">
        <button ref={keepButton} class="button" type="button" onClick={keep}>
          Keep it
        </button>
        <button class="button" type="button" onClick={remove}>
          Remove all the same
        </button>
      </div>
    </div>
  );
}
