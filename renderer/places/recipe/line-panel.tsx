import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Caution } from '#renderer/kit/caution.tsx';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { LineFace } from '#renderer/store/line-faces.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import type { Break, Need } from '#shared-calc/acts/act-fault.ts';
import { needsOf, readersOf } from '#shared-calc/acts/line-breaks.ts';
import { sayBreaks } from '#shared-calc/words/say-act-fault.ts';
import { sayWithoutUse } from '#shared-calc/words/say-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { BoundFields } from './bound-fields.tsx';
import { KindFields, NameFields, SourceFields, WordFields } from './line-fields.tsx';
import type { PutFields } from './put-fields.ts';
import { RoleFields } from './role-fields.tsx';
import { UseFields } from './use-fields.tsx';
import css from './recipe-place.module.css';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';

interface PanelParts {
  readonly book: BookStore;
  readonly store: RecipeStore;
  readonly editHouse: EditHouse;
}

/** Everything about one line of the recipe except its rule, which is edited in the list. */
export function LinePanel({ book, store, editHouse }: PanelParts) {
  const face = store.faces.value.of(store.chosen.value ?? '');
  if (!face) return <SidePanel label="The line" />;
  const { line, label } = face;
  const put: PutFields = (fields) => {
    const input = { line: line.id, fields };
    return editHouse({ act: 'changeLine', input }, () => book.doAct('changeLine', input));
  };
  const rename = (name: string) => {
    const refused = book.doAct('renameLine', { line: line.id, name });
    if (refused === undefined) store.chosen.value = name.trim();
    return refused;
  };
  return (
    <SidePanel class={css['linePanel']} label={`The line ${label}`}>
      <PanelHead where={line.section} title={label} />
      <section>
        <NameFields line={line} put={put} rename={rename} lines={store.lines.value} />
        <KindFields line={line} put={put} lines={store.lines.value} />
        {line.role !== 'tank' && <SourceFields line={line} put={put} />}
        <BoundFields line={line} put={put} book={book} />
        <RoleFields line={line} put={put} records={book.records.value} />
        <UseFields line={line} put={put} book={book} />
        <WordFields line={line} put={put} />
      </section>
      <Readers store={store} line={line} />
      <LineActs book={book} store={store} face={face} editHouse={editHouse} />
    </SidePanel>
  );
}

function Readers({ store, line }: { readonly store: RecipeStore; readonly line: Line }) {
  const readers = readersOf(store.lines.value, line.name);
  return (
    <section>
      <h3>Read by</h3>
      {readers.length === 0 ? (
        <MutedLine>no other line</MutedLine>
      ) : (
        <p class={css['readers']}>
          {readers.map((reader) => (
            <Button key={reader.id} look="plain" onClick={() => (store.chosen.value = reader.name)}>
              {store.faces.value.of(reader.name)?.label}
            </Button>
          ))}
        </p>
      )}
    </section>
  );
}

interface ActParts extends PanelParts {
  readonly face: LineFace;
}

function LineActs({ book, store, editHouse, face: { line, label } }: ActParts) {
  const [asked, setAsked] = useState<readonly Need[]>();
  const move = (to: 'up' | 'down') => () => {
    void book.doAct('moveLine', { line: line.id, to });
    requestAnimationFrame(() => lineRow(line.name)?.scrollIntoView({ block: 'nearest' }));
  };
  const remove = () => {
    const input = { line: line.id, anyway: true };
    const gone = () => void (store.chosen.value = undefined);
    void editHouse({ act: 'removeLine', input }, () => book.doAct('removeLine', input, gone), { written: gone });
  };
  const ask = () => {
    const needs = needsOf(book.records.peek(), line);
    if (needs.length === 0) remove();
    else setAsked(needs);
  };
  return (
    <section>
      <Buttons>
        <Button onClick={move('up')}>Move up</Button>
        <Button onClick={move('down')}>Move down</Button>
        <Button onClick={ask}>Remove</Button>
      </Buttons>
      {asked && <RemoveWarning needs={asked} label={label} keep={() => setAsked(undefined)} remove={remove} />}
    </section>
  );
}

function lineRow(name: string): Element | null {
  return document.querySelector(`[data-line="${CSS.escape(name)}"]`);
}

interface WarningParts {
  readonly needs: readonly Need[];
  readonly label: string;
  readonly keep: () => void;
  readonly remove: () => void;
}

/** Names what would break before anything is removed. */
function RemoveWarning({ needs, label, keep, remove }: WarningParts) {
  const breaks = needs.filter((need): need is Break => 'label' in need);
  const jobs = needs.flatMap((need) => (need.is === 'written' ? [need.job] : []));
  const uses = needs.flatMap((need) => (need.is === 'use' ? [need.use] : []));
  const keepButton = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => keepButton.current?.focus(), []);
  return (
    <Caution role="alert">
      {breaks.length > 0 && (
        <p>
          {breaks.length === 1 ? '1 line reads' : `${breaks.length} lines read`} {label} and could not be worked without
          it: {sayBreaks(breaks)}.
        </p>
      )}
      {uses.map((use) => (
        <p key={use}>{sayWithoutUse(use)}</p>
      ))}
      {jobs.length > 0 && <p>What is written over it in {jobs.join(', ')} goes too.</p>}
      <Buttons>
        <Button ref={keepButton} onClick={keep}>
          Keep it
        </Button>
        <Button onClick={remove}>Remove all the same</Button>
      </Buttons>
    </Caution>
  );
}
