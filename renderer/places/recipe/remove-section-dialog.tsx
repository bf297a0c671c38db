import { useMemo, useState } from 'preact/hooks';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { Need } from '#shared-calc/acts/act-fault.ts';
import { removeLines } from '#shared-calc/acts/several-lines.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { sayNeed } from '#shared-calc/words/say-act-fault.ts';
import { TouchedJobs } from './touched-part.tsx';

interface RemoveParts {
  readonly book: Pick<BookStore, 'derived' | 'doAct'>;
  readonly editHouse: EditHouse;
  readonly recipe: string;
  readonly section: string;
  /** It is gone. */
  readonly gone: () => void;
  readonly close: () => void;
}

/** Tells what rests on the lines of a section, and what its removal is to open jobs, before they go in one act. */
export function RemoveSectionDialog({ book, editHouse, recipe, section, gone, close }: RemoveParts) {
  const [along, setAlong] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const derived = book.derived.value;
  const asked = { recipe, section };
  const needs = useMemo(() => needsFor(derived, asked), [derived, recipe, section]);
  const readers = needs.filter(isLine);
  const done = useMemo(
    () => removeLines.run(derived, { ...asked, along, anyway: true }),
    [derived, recipe, section, along],
  );
  const run = () => {
    const input = { ...asked, along, anyway: true };
    const direct = () => book.doAct('removeLines', input, gone);
    const refused = editHouse({ act: 'removeLines', input }, direct, { written: gone });
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog
      title={`Remove the section ${section}`}
      does={done.ok ? `Remove ${linesSaid(removedBy(done.value).length)}` : 'Remove'}
      run={run}
      wrong={wrong}
      disabled={!done.ok}
      close={close}
    >
      {() => (
        <>
          {needs.length > 0 && <NeedTable needs={needs} />}
          {readers.length > 0 && (
            <Checkbox
              label="Remove the lines that cannot be worked without it too, and all that read those"
              on={along}
              turn={setAlong}
            />
          )}
          {done.ok ? <Removed derived={derived} change={done.value} /> : <MutedLine>{stays}</MutedLine>}
        </>
      )}
    </AskDialog>
  );
}

const stays = 'It stays as long as lines outside it read it.';

/** What needs the lines of a section; none if nothing does. */
function needsFor(derived: Derived, asked: { readonly recipe: string; readonly section: string }): readonly Need[] {
  const done = removeLines.run(derived, { ...asked, along: false, anyway: false });
  return !done.ok && done.fault.kind === 'needed' ? done.fault.by : [];
}

function isLine(need: Need): boolean {
  return 'line' in need;
}

function NeedTable({ needs }: { readonly needs: readonly Need[] }) {
  const said = new Map(needs.map(sayNeed).map((each) => [`${each.what}: ${each.why}`, each]));
  return (
    <DialogScroll label="What rests on it">
      <Table
        label="What rests on it"
        rows={[...said.values()]}
        keyOf={(_, at) => at}
        columns={[
          { head: 'What rests on it', names: true, cell: ({ what }) => what },
          { head: 'Why', cell: ({ why }) => why },
        ]}
      />
    </DialogScroll>
  );
}

function Removed({ derived, change }: { readonly derived: Derived; readonly change: Change }) {
  const labels = removedBy(change).join(', ');
  return (
    <>
      <MutedLine>Goes: {labels}.</MutedLine>
      <TouchedJobs derived={derived} change={change} />
      <MutedLine>{actNames.undo} brings all of it back.</MutedLine>
    </>
  );
}

function removedBy({ removed }: Change): readonly string[] {
  return removed.flatMap((each) => (each.kind === 'line' ? [lineLabel(each.record)] : []));
}

function linesSaid(count: number): string {
  return count === 1 ? '1 line' : `${count} lines`;
}
