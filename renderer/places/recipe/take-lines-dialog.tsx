import { useMemo, useState } from 'preact/hooks';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { LinesOfRecipe } from '#shared-calc/acts/act-fault.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { takeLines } from '#shared-calc/acts/several-lines.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Line, Recipe } from '#shared-calc/records/records.ts';
import { isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { turned } from './new-recipe-form.ts';
import { TouchedJobs } from './touched-part.tsx';

interface TakeParts {
  readonly book: Pick<BookStore, 'records' | 'derived' | 'doAct'>;
  readonly editHouse: EditHouse;
  readonly recipe: Recipe;
  /** Shows the first line that came, by its name. */
  readonly goTo: (line: string) => void;
  readonly close: () => void;
}

const clashes = [
  { value: 'keep', label: 'stay as they are here' },
  { value: 'take', label: 'become as they are there' },
  { value: 'rename', label: 'stay, and come under new names beside them' },
] as const;

type Clash = (typeof clashes)[number]['value'];

/** Takes sections or lines over from another recipe; what they read comes along, and names that are there are asked about. */
export function TakeLinesDialog({ book, editHouse, recipe, goTo, close }: TakeParts) {
  const derived = book.derived.value;
  const others = [...book.records.value.recipe.values()].filter(({ id }) => id !== recipe.id);
  const [from, setFrom] = useState(others[0]?.id ?? '');
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [clash, setClash] = useState<Clash>('keep');
  const [wrong, setWrong] = useState<string>();
  const lines = derived.lines(from);
  const input = { recipe: recipe.id, from, lines: [...chosen], along: true, clash };
  const told = useMemo(() => previewOf(derived, input), [derived, recipe.id, from, chosen, clash]);
  const run = () => {
    const written = ({ added }: Change) => {
      const first = added.find((each) => each.kind === 'line');
      if (first?.kind === 'line') goTo(first.record.name);
    };
    const refused = editHouse({ act: 'takeLines', input }, () => book.doAct('takeLines', input, written), { written });
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog
      title={actNames.takeLines}
      does="Take them"
      run={run}
      wrong={wrong}
      disabled={chosen.size === 0 || told.fault !== undefined}
      close={close}
    >
      {() => (
        <>
          <Fields look="wide">
            <PickOne
              label="From"
              value={from}
              options={others.map(({ id, title }) => ({ value: id, label: `${id} ${title.toLowerCase()}` }))}
              choose={(id) => {
                setFrom(id);
                setChosen(new Set());
              }}
            />
          </Fields>
          <Choice lines={lines} chosen={chosen} choose={setChosen} />
          <Told told={told} derived={derived} clash={clash} setClash={setClash} />
        </>
      )}
    </AskDialog>
  );
}

interface ChoiceParts {
  readonly lines: readonly Line[];
  readonly chosen: ReadonlySet<string>;
  readonly choose: (chosen: ReadonlySet<string>) => void;
}

function Choice({ lines, chosen, choose }: ChoiceParts) {
  const sections = Map.groupBy(lines, ({ section }) => section);
  const turn = (some: readonly Line[], on: boolean) =>
    choose(some.reduce((set, { name }) => turned(set, name, on), chosen));
  return (
    <DialogScroll label="Sections and lines">
      <Table<Line>
        label="Sections and lines"
        groups={[...sections].map(([section, rows]) => ({
          key: section,
          head: (
            <Checkbox label={section} on={rows.every(({ name }) => chosen.has(name))} turn={(on) => turn(rows, on)} />
          ),
          rows,
        }))}
        keyOf={({ id }) => id}
        columns={[
          {
            names: true,
            cell: (line) => (
              <Checkbox label={lineLabel(line)} on={chosen.has(line.name)} turn={(on) => turn([line], on)} />
            ),
          },
          { cell: ({ text }) => text },
        ]}
      />
    </DialogScroll>
  );
}

type Named = LinesOfRecipe['lines'];

interface Preview {
  /** Read by what is chosen, and not here. */
  readonly along: Named;
  /** Here already. */
  readonly clashing: Named;
  readonly change?: Parameters<typeof TouchedJobs>[0]['change'];
  readonly fault?: string;
}

function previewOf(derived: Derived, input: ActInputs['takeLines']): Preview {
  if (input.lines?.length === 0) return { along: [], clashing: [] };
  const alone = takeLines.run(derived, { ...input, along: false });
  const unasked = takeLines.run(derived, { ...input, clash: undefined });
  const done = takeLines.run(derived, input);
  return {
    along: !alone.ok && alone.fault.kind === 'reads-others' ? alone.fault.lines : [],
    clashing: !unasked.ok && unasked.fault.kind === 'names-clash' ? unasked.fault.lines : [],
    ...outcomeOf(done),
  };
}

function outcomeOf(done: ReturnType<typeof takeLines.run>): Pick<Preview, 'change' | 'fault'> {
  if (!done.ok) return { fault: sayActFault(done.fault) };
  return isEmptyChange(done.value)
    ? { fault: 'Nothing would come: all of them are here already.' }
    : { change: done.value };
}

interface ToldParts {
  readonly told: Preview;
  readonly derived: Derived;
  readonly clash: Clash;
  readonly setClash: (clash: Clash) => void;
}

function Told({ told: { along, clashing, change, fault }, derived, clash, setClash }: ToldParts) {
  return (
    <>
      {along.length > 0 && <MutedLine>They read these, which come along: {labelsOf(along)}.</MutedLine>}
      {clashing.length > 0 && (
        <>
          <MutedLine>Here already: {labelsOf(clashing)}.</MutedLine>
          <Fields look="wide">
            <ChoiceField
              label="Those that are here"
              value={clash}
              options={clashes}
              choose={(word) => setClash(clashes.find(({ value }) => value === word)?.value ?? clash)}
            />
          </Fields>
        </>
      )}
      {fault !== undefined && <p role="status">{fault}</p>}
      {change && <TouchedJobs derived={derived} change={change} />}
    </>
  );
}

function labelsOf(lines: Named): string {
  return lines.map(({ label }) => label).join(', ');
}
