import type { AllBenchActs } from '#renderer/bench/bench-acts.ts';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { BenchSession } from './bench-session.ts';
import type { BookStore } from './book-store.ts';
import type { EditHouse } from './house-ask.ts';
import { ruleHelpOf } from './rule-help-of.ts';
import { titleOfSection, toggled, type Folds } from './section-rows.ts';

export interface ActsParts {
  readonly book: BookStore;
  readonly session: BenchSession;
  readonly choose: (place: BoxPlace | undefined) => void;
  readonly takeSize: () => void;
  readonly editHouse?: EditHouse | undefined;
}

/** Without a dialog an edit of the house is done at once. */
const atOnce: EditHouse = (_, direct) => direct();

const noHelp: RuleHelp = {
  check: () => ({ faults: [], marks: [] }),
  complete: () => [],
  hint: () => undefined,
};

const issued = 'This quote is issued and stays as it is. Make a revision to change it.';
const noJob = 'No job lies on the bench: start one first.';

/** The acts of the bench, applied to the job that is open on it. */
export function benchActs({ book, session, takeSize, choose, editHouse = atOnce }: ActsParts): AllBenchActs {
  const { doAct } = book;
  const onJob = (run: (job: string) => string | undefined): string | undefined => {
    const opened = session.opened.peek();
    if (opened?.job !== undefined) return run(opened.job);
    const says = opened ? issued : noJob;
    book.refuse(says);
    return says;
  };
  const clear = (places: readonly BoxPlace[]) =>
    void onJob((job) => doAct('backToHouse', { job, cells: places.map(cellOf) }));
  return {
    write: (changes) =>
      onJob((job) =>
        doAct('writeCells', { job, cells: changes.map((each) => ({ ...cellOf(each), text: each.text })) }),
      ),
    clear,
    refuse: book.refuse,
    helpFor: (place) => helpFor(session, place),
    choose,
    fold: (section) => fold(session, (folds, title) => ({ ...folds, turned: toggled(folds.turned, title) }), section),
    showAll: (section) => fold(session, (folds, title) => ({ ...folds, all: toggled(folds.all, title) }), section),
    setKit: (column, kit) => void onJob((job) => doAct('setKit', { job, column, kit })),
    setCount: (column, count) => void onJob((job) => doAct('setCount', { job, column, count })),
    takeSize,
    takeAgain: (column) => void onJob((job) => doAct('takeAgain', { job, column })),
    copySize: (column) => void onJob((job) => doAct('copySize', { job, column })),
    nameSize: (column, label) => onJob((job) => doAct('nameSize', { job, column, label })),
    setRecipe: (column, recipe) => void onJob((job) => doAct('setRecipe', { job, column, recipe })),
    putAway: (column) => void onJob((job) => doAct('dropSize', { job, column })),
    moveSize: (column, to) => void onJob((job) => doAct('moveSize', { job, column, to })),
    backToHouse: (place) => clear([place]),
    sendToHouse: (place) =>
      void onJob((job) => {
        const input = { job, ...cellOf(place) };
        return editHouse({ act: 'sendToHouse', input }, () => doAct('sendToHouse', input));
      }),
    holdForJob: (place, text) => onJob((job) => doAct('holdForJob', { job, ...cellOf(place), text })),
    keepForTank: (place) =>
      onJob((job) => {
        const input = { job, ...cellOf(place) };
        return editHouse({ act: 'keepForTank', input }, () => doAct('keepForTank', input));
      }),
    writeNote: (place, note) => void onJob((job) => doAct('noteCell', { job, ...cellOf(place), note })),
    sayWhoAsked: (place, by) => onJob((job) => doAct('sayWhoAsked', { job, ...cellOf(place), by })),
    takeTank: (tank, recipe) => onJob((job) => doAct('takeSize', { job, tank, recipe })),
    takeNewTank: (tank, { priceCoins, recipe }) => onJob((job) => doAct('newTank', { job, tank, priceCoins, recipe })),
  };
}

function cellOf({ row, column }: BoxPlace) {
  return { column, line: row };
}

function fold(session: BenchSession, turn: (folds: Folds, title: string) => Folds, section: string): void {
  const folds = session.opened.peek()?.shown.folds;
  if (folds) folds.value = turn(folds.peek(), titleOfSection(section));
}

function helpFor(session: BenchSession, { row, column }: BoxPlace): RuleHelp {
  const opened = session.opened.peek();
  const size = opened?.worked.source().columns.find(({ key }) => key === column);
  const faces = opened?.shown.facesIn(size ?? {});
  const face = faces?.of(row);
  if (!opened || !faces || !face) return noHelp;
  return ruleHelpOf({ bench: opened.worked.bench(), column, line: face.line, faces });
}
