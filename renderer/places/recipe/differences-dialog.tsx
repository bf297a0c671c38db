import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { ChoiceField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import { kinship, makeChild, sayKinship } from '#shared-calc/acts/make-child.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { mostAlike } from '#shared-calc/derive/recipe-diff.ts';
import { lineMarks, tankMarks, type LineMark } from '#shared-calc/recipe/family-marks.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Recipe } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { DifferenceTable } from './difference-table.tsx';
import { familyMove, type FamilyMove, type ForTanks, type MoveKind } from './family-move.ts';
import { TouchedPart } from './touched-part.tsx';

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
  const [other, setOther] = useState(() => recipe.parent ?? mostAlike(records, recipe.id) ?? '');
  const [tank, setTank] = useState(first ?? '');
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
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
          <Lines key={other} book={book} recipe={recipe} other={other} tank={tank} leave={leave} />
        </>
      )}
    </Dialog>
  );
}

interface LinesParts extends Omit<DifferencesParts, 'tank' | 'close'> {
  readonly other: string;
  readonly tank: string;
  readonly leave: () => void;
}

function Lines({ book, recipe, other, tank, leave }: LinesParts) {
  const [derived, { id }] = [book.derived.value, recipe];
  const isParent = other === recipe.parent;
  const marks = useMemo(() => (isParent ? lineMarks(derived.records, id) : []), [derived, id, isParent]);
  const limited = useMemo(() => tankMarks(derived.records, id), [derived, id]);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const turn = (line: string, on: boolean) =>
    setChosen(new Set(on ? [...chosen, line] : [...chosen].filter((each) => each !== line)));
  const close = <Button onClick={leave}>{actNames.close}</Button>;
  return (
    <>
      <DialogScroll label="Lines that differ">
        <DifferenceTable {...{ derived, recipe, other, tank, marks, limited, chosen, turn }} />
      </DialogScroll>
      {recipe.parent === undefined && <ChildPart book={book} recipe={recipe} parent={other} />}
      {isParent && marks.length + limited.length > 0 ? (
        <MovePart
          key={[...chosen].join(' ')}
          book={book}
          recipe={id}
          lines={[...chosen]}
          marks={marks}
          limited={limited.filter(({ name }) => chosen.has(name))}
          done={() => setChosen(new Set())}
        >
          {close}
        </MovePart>
      ) : (
        <Buttons>{close}</Buttons>
      )}
    </>
  );
}

interface MoveParts extends Pick<DifferencesParts, 'book'> {
  readonly recipe: string;
  /** The lines that are chosen, by name. */
  readonly lines: readonly string[];
  readonly marks: readonly LineMark[];
  /** What differs of the chosen lines for some tanks alone. */
  readonly limited: readonly LineMark[];
  readonly done: () => void;
  readonly children: ComponentChildren;
}

/** The acts on the chosen lines; the first press shows what it is to open jobs, the second does it. */
function MovePart({ book, recipe, lines, marks, limited, done, children }: MoveParts) {
  const isLimited = lines.every((name) => !marks.some((mark) => mark.name === name));
  const [tanks, setTanks] = useState<ForTanks>(isLimited ? 'along' : 'stay');
  const [kind, setKind] = useState<MoveKind>();
  const [wrong, setWrong] = useState<string>();
  const move = useMemo(() => kind && familyMove(kind, { recipe, lines }, tanks), [kind, recipe, tanks]);
  const run = () => {
    const refused = move && doMove(book, move);
    setWrong(refused);
    setKind(undefined);
    if (refused === undefined) done();
  };
  return (
    <>
      {limited.length > 0 && <TanksField limited={limited} value={tanks} choose={setTanks} />}
      {move && <TouchedPart derived={book.derived.value} asked={move} />}
      {lines.length === 0 && <MutedLine>Choose lines to take, to keep or to send up.</MutedLine>}
      <Fault role="alert">{wrong}</Fault>
      <Buttons>
        {children}
        {moves.map(([does, name]) => (
          <Button
            key={does}
            look={kind === does ? 'main' : 'framed'}
            disabled={lines.length === 0}
            onClick={() => (kind === does ? run() : setKind(does))}
          >
            {kind === does ? `${name}: do it` : name}
          </Button>
        ))}
      </Buttons>
    </>
  );
}

function doMove(book: BookStore, move: FamilyMove): string | undefined {
  return move.act === 'sendToParent' ? book.doAct(move.act, move.input) : book.doAct(move.act, move.input);
}

const moves = [
  ['take', actNames.takeFromParent],
  ['keep', actNames.keepOwn],
  ['send', actNames.sendUp],
] as const;

interface TanksParts {
  readonly limited: readonly LineMark[];
  readonly value: ForTanks;
  readonly choose: (tanks: ForTanks) => void;
}

/** What becomes of the figures of lines for some tanks alone. */
function TanksField({ limited, value, choose }: TanksParts) {
  const tanks = [...new Set(limited.flatMap((mark) => mark.tanks ?? []))];
  return (
    <Fields look="wide">
      <ChoiceField
        label="Figures for some tanks"
        value={typeof value === 'object' ? `of ${value.ofTank}` : value}
        options={[
          { value: 'stay', label: 'stay as they are here' },
          { value: 'along', label: 'go along, for the same tanks' },
          ...tanks.map((tank) => ({ value: `of ${tank}`, label: `that of ${tank} goes up for all tanks` })),
        ]}
        choose={(word) => {
          const ofTank = tanks.find((tank) => word === `of ${tank}`);
          if (ofTank !== undefined) choose({ ofTank });
          else choose(word === 'along' ? 'along' : 'stay');
        }}
      />
    </Fields>
  );
}

interface ChildParts extends Pick<DifferencesParts, 'book' | 'recipe'> {
  readonly parent: string;
}

/** Offers to make a whole copy a child of the recipe beside it. */
function ChildPart({ book, recipe: { id }, parent }: ChildParts) {
  const derived = book.derived.value;
  const told = useMemo(() => childTold(derived, id, parent), [derived, id, parent]);
  const [wrong, setWrong] = useState<string>();
  if (told === undefined) return null;
  return (
    <>
      <MutedLine>
        As a child of {parent}: {told}. No figure of {id} changes, and later changes of {parent} reach the lines that
        are equal.
      </MutedLine>
      <Fault role="alert">{wrong}</Fault>
      <Buttons>
        <Button onClick={() => setWrong(book.doAct('makeChild', { recipe: id, parent, note: '' }))}>
          {actNames.holdDifferences}
        </Button>
      </Buttons>
    </>
  );
}

/** Nothing where it cannot be: of a recipe that inherits from it. */
function childTold(derived: Derived, recipe: string, parent: string): string | undefined {
  const done = makeChild.run(derived, { recipe, parent, note: '' });
  return done.ok ? sayKinship(kinship(applyChange(derived.records, done.value), recipe)) : undefined;
}
