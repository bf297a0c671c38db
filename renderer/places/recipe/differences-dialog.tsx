import { useMemo, useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import { figuresBetween, recipeDiff, type FigurePair, type LineDifference } from '#shared-calc/derive/recipe-diff.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { lineMarks, type LineMark } from '#shared-calc/recipe/family-marks.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { houseTextOf } from '#shared-calc/recipe/range-text.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import type { Line, Recipe } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { TouchedPart, type FamilyAct } from './touched-part.tsx';

interface DifferencesParts {
  readonly book: BookStore;
  readonly recipe: Recipe;
  /** The tank that figures are shown for. */
  readonly tank: string | undefined;
  readonly close: () => void;
}

/** A recipe beside another, line by line; lines of its parent are taken, kept or sent up. */
export function DifferencesDialog({ book, recipe, tank: first, close }: DifferencesParts) {
  const records = book.records.value;
  const others = [...records.recipe.values()].filter(({ id }) => id !== recipe.id);
  const [other, setOther] = useState(recipe.parent ?? others[0]?.id ?? '');
  const [tank, setTank] = useState(first ?? '');
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
  const marks = useMemo(() => lineMarks(records, recipe.id), [records, recipe.id]);
  return (
    <Dialog title={`${recipe.id} beside ${other}`} wide close={close}>
      {(leave) => (
        <>
          <Fields>
            <PickOne
              label="Recipe"
              value={other}
              options={others.map(({ id, title }) => ({ value: id, label: `${id} ${title}` }))}
              choose={setOther}
            />
            <PickOne label="Figures on" value={tank} options={tanks} choose={setTank} />
          </Fields>
          <Lines
            key={other}
            book={book}
            recipe={recipe}
            other={other}
            tank={tank}
            marks={other === recipe.parent ? marks : []}
            leave={leave}
          />
        </>
      )}
    </Dialog>
  );
}

interface LinesParts extends Omit<DifferencesParts, 'tank' | 'close'> {
  readonly other: string;
  readonly tank: string;
  /** Of its parent alone. */
  readonly marks: readonly LineMark[];
  readonly leave: () => void;
}

function Lines({ book, recipe, other, tank, marks, leave }: LinesParts) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [act, setAct] = useState<FamilyAct>();
  const [wrong, setWrong] = useState<string>();
  const turn = (line: string, on: boolean) => {
    setChosen(new Set(on ? [...chosen, line] : [...chosen].filter((each) => each !== line)));
    setAct(undefined);
  };
  const lines = [...chosen];
  const run = (does: FamilyAct) => {
    const refused = doIt(book, does, { recipe: recipe.id, lines });
    setWrong(refused);
    setAct(undefined);
    if (refused === undefined) setChosen(new Set());
  };
  return (
    <>
      <DialogScroll label="Lines that differ">
        <LineTable derived={book.derived.value} {...{ recipe, other, tank, marks, chosen, turn }} />
      </DialogScroll>
      {act && <TouchedPart derived={book.derived.value} recipe={recipe.id} lines={lines} act={act} />}
      {marks.length > 0 && chosen.size === 0 && <MutedLine>Choose lines to take, to keep or to send up.</MutedLine>}
      <Fault role="alert">{wrong}</Fault>
      <Buttons>
        <Button onClick={leave}>{actNames.close}</Button>
        {marks.length > 0 &&
          acts.map(([does, name]) => (
            <Button
              key={does}
              look={act === does ? 'main' : 'framed'}
              disabled={chosen.size === 0}
              onClick={() => (act === does ? run(does) : setAct(does))}
            >
              {act === does ? `${name}: do it` : name}
            </Button>
          ))}
      </Buttons>
    </>
  );
}

function doIt(book: BookStore, does: FamilyAct, named: { readonly recipe: string; readonly lines: string[] }) {
  const input = { ...named, note: '' };
  return does === 'send'
    ? book.doAct('sendToParent', input)
    : book.doAct('takeFromParent', { ...input, keep: does === 'keep' });
}

interface TableParts extends Pick<LinesParts, 'recipe' | 'other' | 'tank' | 'marks'> {
  readonly derived: Derived;
  readonly chosen: ReadonlySet<string>;
  readonly turn: (line: string, on: boolean) => void;
}

function LineTable({ derived, recipe, other, tank, marks, chosen, turn }: TableParts) {
  const { records, display } = derived;
  const sides = [
    { records, recipe: other },
    { records, recipe: recipe.id },
  ] as const;
  const rows = useMemo(() => recipeDiff(...sides), [records, other, recipe.id]);
  const figures = useMemo(() => figuresBetween(...sides, tank), [records, other, recipe.id, tank]);
  const markOf = new Map(marks.map((mark) => [mark.name, mark]));
  const nameOf = (row: LineDifference) =>
    markOf.has(row.line) ? (
      <Checkbox label={labelOf(row)} on={chosen.has(row.line)} turn={(on) => turn(row.line, on)} />
    ) : (
      labelOf(row)
    );
  return (
    <Table<LineDifference>
      label="Lines that differ"
      rows={rows}
      empty={`No line differs from ${other}.`}
      keyOf={({ line }) => line}
      columns={[
        { head: 'Line', names: true, cell: nameOf },
        { head: other, cell: ({ left }) => textOf(left, display) },
        { head: recipe.id, cell: (row) => `${textOf(row.right, display)}${toldOf(row)}` },
        { head: `On ${tank}`, figure: true, cell: (row) => figureOf(row, figures.get(row.line), display) },
        { head: 'Since', cell: ({ line }) => sinceOf(markOf.get(line), other) },
      ]}
    />
  );
}

function figureOf({ left, right }: LineDifference, pair: FigurePair | undefined, display: Display): string {
  const unit = (right ?? left)?.unit ?? 'number';
  const said = (value: FigurePair['from']) => (value === undefined ? '-' : showWithUnit(value, unit, display));
  if (!pair) return '';
  return pair.moved ? `${said(pair.from)} → ${said(pair.to)}` : said(pair.to);
}

function textOf(line: Line | undefined, display: Display): string {
  if (!line) return 'not there';
  const text = entryText(houseTextOf(line), display);
  return text === '' ? 'no figure' : text;
}

const acts = [
  ['take', actNames.takeFromParent],
  ['keep', actNames.keepOwn],
  ['send', actNames.sendUp],
] as const;

function labelOf({ left, right, line }: LineDifference): string {
  const of = right ?? left;
  return of ? lineLabel(of) : line;
}

/** What differs beside the figure: `, note`. */
function toldOf({ keys, left, right }: LineDifference): string {
  if (keys.length === 0 || left?.text !== right?.text) return '';
  return ` (${keys.map((key) => headingOf('line', key).toLowerCase()).join(', ')})`;
}

function sinceOf(mark: LineMark | undefined, parent: string): string {
  if (!mark || mark.moved.length === 0) return '';
  const was = mark.moved.includes('text') ? mark.mark?.was.text : undefined;
  return typeof was === 'string' && was !== '' ? `${parent} had ${was}` : `${parent} has changed`;
}
