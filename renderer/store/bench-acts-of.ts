import type { ReadonlySignal } from '@preact/signals';
import type { BenchActs } from '#renderer/bench/bench-acts.ts';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { LocalValue, Tank } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { BenchDesk } from './bench-desk.ts';
import type { BookStore } from './book-store.ts';
import { sendToHouse } from './house-changes.ts';
import { ruleHelpOf } from './rule-help-of.ts';
import { titleOfSection, toggled, type Folds } from './section-rows.ts';
import { nameSize, putAway, setCount, takeAgain, takeNewTank, takeTank } from './size-changes.ts';
import { writeAsker } from './write-asker.ts';
import { clearBoxes, writeBoxes, writeNote, writeWhole, type WriteDesk } from './write-boxes.ts';

/** Acts over boxes and sizes beyond those that the strips ask for. Each answers a sentence where it is refused. */
export interface BenchHands {
  readonly backToHouse: (place: BoxPlace) => string | undefined;
  readonly sendToHouse: (place: BoxPlace) => string | undefined;
  /** What stands in the box holds for the whole job; with `typed`, that does. */
  readonly forWholeJob: (place: BoxPlace, typed?: string) => string | undefined;
  readonly writeNote: (place: BoxPlace, note: string) => string | undefined;
  /** Who asked for what the box is written over with. */
  readonly writeAsker: (place: BoxPlace, by: LocalValue['by']) => string | undefined;
  readonly take: (tank: string) => string | undefined;
  readonly takeNew: (tank: Tank, priceCoins?: number) => string | undefined;
  /** What a size is called in this job; an empty text calls it by its tank again. */
  readonly nameSize: (column: string, label: string) => string | undefined;
  /** Another column of the same tank with the same local values. */
  readonly copySize: (column: string) => string | undefined;
}

export interface ActsParts {
  readonly book: BookStore;
  readonly desk: BenchDesk;
  readonly chosen: ReadonlySignal<BoxPlace | undefined>;
  readonly choose: (place: BoxPlace | undefined) => void;
  readonly takeSize: () => void;
}

const noHelp: RuleHelp = {
  check: () => ({ faults: [], marks: [] }),
  complete: () => [],
  hint: () => undefined,
};

const issued = 'This quote is issued and stays as it is. Make a revision to change it.';
const noJob = 'No job lies on the bench: start one first.';

export function benchActs(parts: ActsParts): { readonly acts: BenchActs; readonly hands: BenchHands } {
  const { book, desk, takeSize, choose } = parts;
  const act = (make: (on: WriteDesk) => Result<Change, string>): string | undefined => {
    const on = desk.writing();
    if (on) return book.act(make(on));
    const says = desk.laid.peek() ? issued : noJob;
    book.refuse(says);
    return says;
  };
  const size = (key: string, make: (on: WriteDesk, id: string, called: string) => Result<Change, string>) =>
    act((on) => {
      const column = on.source.columns.find((each) => each.key === key);
      return make(on, column?.size ?? '', column ? calledOf(column) : key);
    });
  const acts: BenchActs = {
    write: (changes) => act((on) => writeBoxes(on, changes)),
    clear: (places) => void act((on) => clearBoxes(on, places)),
    refuse: book.refuse,
    helpFor: (place) => helpFor(desk, place),
    choose,
    fold: (section) => fold(desk, (folds, title) => ({ ...folds, turned: toggled(folds.turned, title) }), section),
    showAll: (section) => fold(desk, (folds, title) => ({ ...folds, all: toggled(folds.all, title) }), section),
    setKit: (column, kit) => void act((on) => setKit(on, column, kit)),
    setCount: (column, count) => void size(column, ({ records }, id, called) => setCount(records, id, count, called)),
    takeSize,
    takeAgain: (column) => void size(column, ({ records }, id) => takeAgain(records, id, 'by the house')),
    copySize: (column) => void hands.copySize(column),
    nameSize: (column, label) => hands.nameSize(column, label),
    putAway: (column) => void size(column, ({ records }, id, called) => putAway(records, id, called)),
  };
  const hands: BenchHands = {
    backToHouse: (place) => act((on) => clearBoxes(on, [place])),
    sendToHouse: (place) => act((on) => sendToHouse(on, place)),
    forWholeJob: (place, typed) => act((on) => writeWhole(on, place, typed)),
    writeNote: (place, note) => act((on) => writeNote(on, place, note)),
    writeAsker: (place, by) => act((on) => writeAsker(on, place, by)),
    take: (tank) => act(({ records, job }) => takeTank(records, job, tank)),
    takeNew: (tank, priceCoins) =>
      act(({ records, job }) => takeNewTank(records, job, { tank, priceCoins, from: book.info.peek().today })),
    nameSize: (column, label) => size(column, ({ records }, id, called) => nameSize(records, id, label, called)),
    copySize: (column) => size(column, ({ records }, id) => takeAgain(records, id, 'as it is')),
  };
  return { acts, hands };
}

/** A kit that the house or the job has anyway takes the local one away. */
function setKit(on: WriteDesk, column: string, kit: string): Result<Change, string> {
  const line = on.source.lines.find(({ use }) => use === 'kit');
  if (!line) return failed('No kit level is given in this recipe.');
  const row = line.name;
  const otherwise = on.source.job.get(row) ?? line.text;
  return otherwise === kit ? clearBoxes(on, [{ row, column }]) : writeBoxes(on, [{ row, column, text: kit }]);
}

function fold(desk: BenchDesk, turn: (folds: Folds, title: string) => Folds, section: string): void {
  const folds = desk.laid.peek()?.shown.folds;
  if (folds) folds.value = turn(folds.peek(), titleOfSection(section));
}

function helpFor(desk: BenchDesk, { row, column }: BoxPlace): RuleHelp {
  const laid = desk.laid.peek();
  const face = laid?.shown.faces().of(row);
  if (!laid || !face) return noHelp;
  return ruleHelpOf({ bench: laid.worked.bench(), column, line: face.line, faces: laid.shown.faces() });
}
