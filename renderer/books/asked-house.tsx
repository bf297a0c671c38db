import { useMemo, useState } from 'preact/hooks';
import { contextNow, type BookApi, type BookContext } from './book-api.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { AskedEdit, HouseAsk } from '#renderer/store/house-ask.ts';
import { jobsTouched, type TouchedJob } from '#shared-calc/derive/house-offers.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { effectWords, textsWords } from '#shared-calc/papers/house-said.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';

/** The edit of a house that waits for an answer, if there is one. */
export function AskedHouse({ house, book }: { readonly house: HouseAsk; readonly book: Pick<BookApi, 'derived'> }) {
  const asked = house.asked.value;
  return asked ? <HouseDialog asked={asked} context={contextNow(book)} /> : null;
}

/** As many edits stand in the dialog without scrolling. */
const FEW = 6;

interface DialogParts {
  readonly asked: AskedEdit;
  readonly context: BookContext;
}

/** Before and after, why, and what the edit is to each job of the recipe. */
function HouseDialog({ asked, context }: DialogParts) {
  const { edits, recipe, answer, leave } = asked;
  const [note, setNote] = useState('');
  const [wrong, setWrong] = useState<string>();
  const run = (as: 'in force' | 'proposal') => () => {
    const refused = answer(note, as);
    setWrong(refused);
    return refused === undefined;
  };
  const touched = useMemo(() => jobsTouched(context, recipe, edits), [asked]);
  const facts = edits.map((edit) => {
    const line = edit.after ?? edit.before;
    return [line ? lineLabel(line) : '', textsWords(edit, context.display)] as const;
  });
  return (
    <AskDialog
      title={`Change the house ${recipe}`}
      does="Put in force"
      run={run('in force')}
      also={{ does: 'Keep as a proposal', run: run('proposal') }}
      wrong={wrong}
      close={leave}
    >
      {(enter) => (
        <>
          {facts.length > FEW ? (
            <DialogScroll label="What changes">
              <FactList facts={facts} />
            </DialogScroll>
          ) : (
            <FactList facts={facts} />
          )}
          <Fields look="wide">
            <TextField
              label="Why"
              text={note}
              typing={setNote}
              enter={enter}
              hint="It stands in the log of the recipe with today's date."
            />
          </Fields>
          <Touched touched={touched} context={context} />
          <Hint>A sold job stays as it was sold until the change is taken on its card.</Hint>
        </>
      )}
    </AskDialog>
  );
}

interface TouchedParts extends Pick<DialogParts, 'context'> {
  readonly touched: readonly TouchedJob[];
}

function Touched({ touched, context }: TouchedParts) {
  return (
    <DialogScroll label="Jobs it is something to">
      <Table
        label="Jobs it is something to"
        rows={touched}
        keyOf={({ job }) => job.id}
        columns={[
          { head: 'Job', names: true, cell: ({ job }) => jobName(job) },
          { head: 'State', cell: ({ job }) => job.state },
          { head: 'What it is to it', cell: ({ will }) => willWords[will] },
          { head: 'What it does', cell: ({ effect }) => effect && effectWords(effect, context) },
        ]}
      />
    </DialogScroll>
  );
}

const willWords: Readonly<Record<TouchedJob['will'], string>> = {
  follow: 'follows it',
  'be offered': 'will be offered it',
  nothing: 'nothing: it is being built, or built',
};
