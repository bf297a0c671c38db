import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Act } from '#shared-calc/acts/act.ts';
import { runAct } from '#shared-calc/acts/act.ts';
import { forkRecipe, sendToParent, takeFromParent } from '#shared-calc/acts/family-acts.ts';
import { houseLog } from '#shared-calc/acts/house-acts.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { touchedBy, type TouchedJob } from '#shared-calc/derive/house-offers.ts';
import { changeWords, effectWords } from '#shared-calc/papers/house-said.ts';
import { lineMarks } from '#shared-calc/recipe/family-marks.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import type { Book } from '#electron/book/book.ts';
import type { Command } from '#electron/cli/command.ts';
import { logJson, touchedJson } from '#electron/cli/house-answer.ts';
import { refusedAct, writeChange } from '#electron/cli/job-acts.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments, OptionTable } from '#electron/cli/read-arguments.ts';
import { diffJson, diffTable, type Compared } from '#electron/cli/recipe-answer.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { wordsMisuse } from '#electron/cli/words-misuse.ts';
import { today } from '#electron/service/today.ts';

const listCommand: Command = {
  name: 'recipe list',
  usage: 'recipe list: the recipes of the house as a family, with what each changes, adds and leaves out',
  options: bookOption,
  misuse: (given) => wordsMisuse(given, []),
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const rows = [...records.recipe.values()].map((recipe) => ({ recipe, ...counts(records, recipe.id) }));
      return {
        is: 'answer',
        json: rows.map(({ recipe: { id, title, parent }, ...row }) => ({
          recipe: id,
          title,
          parent: parent ?? null,
          ...row,
        })),
        table: () =>
          textTable(
            ['recipe', 'title', 'parent', 'lines', 'changed', 'added', 'left out', 'to compare'],
            rows.map(({ recipe: { id, title, parent = '' }, lines, changed, added, leftOut, toCompare }) => [
              id,
              title,
              parent,
              ...[lines, changed, added, leftOut, toCompare].map(String),
            ]),
          ),
      };
    }),
};

function counts(records: Records, recipe: string) {
  const marks = lineMarks(records, recipe);
  const of = (is: string) => marks.filter((mark) => mark.is === is).length;
  const toCompare = marks.filter(({ moved }) => moved.length > 0).length;
  return {
    lines: linesOf(records, recipe).length,
    changed: of('changed'),
    added: of('added'),
    leftOut: of('left out'),
    toCompare,
  };
}

const sizesOption = { ...bookOption, sizes: 'text' } as const satisfies OptionTable;

const diffCommand: Command = {
  name: 'recipe diff',
  usage:
    'recipe diff H1 H5 [--sizes T07,T03]: the lines that two recipes do not have alike, with their figures on tanks',
  options: sizesOption,
  misuse: (given) => wordsMisuse(given, ['recipe, as H1', 'recipe to compare it with, as H5']),
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const [left = '', right = ''] = given.words;
      const unknown = [left, right].find((each) => !records.recipe.has(each));
      if (unknown !== undefined) return refusal(noRecipe(unknown, records));
      const tanks = tanksOf(given, records);
      if (!tanks.ok) return refusal(tanks.fault);
      const compared = { left: { records, recipe: left }, right: { records, recipe: right }, tanks: tanks.value };
      return {
        is: 'answer',
        json: { left, right, ...diffJson(compared) },
        table: () => diffTable(compared, derive(records, today())),
      };
    }),
};

function noRecipe(recipe: string, records: Records): string {
  const known = [...records.recipe.keys()];
  return `No recipe called ${recipe}. There are: ${known.join(', ')}.${didYouMean(recipe, known)}`;
}

function tanksOf(given: Arguments, records: Records): Result<readonly string[], string> {
  const codes = (listOf(given, 'sizes') ?? []).map((word) =>
    records.tank.has(word) ? word : word.replace(/x\d+$/, ''),
  );
  const unknown = codes.find((code) => !records.tank.has(code));
  if (unknown === undefined) return ok(codes);
  return failed(`No tank called ${unknown}.${didYouMean(unknown, [...records.tank.keys()])}`);
}

/** The parts of `--lines a,b`; nothing where it is left out. */
function listOf(given: Arguments, option: string): readonly string[] | undefined {
  const parts = given
    .text(option)
    ?.split(',')
    .map((each) => each.trim());
  return parts?.filter((each) => each !== '');
}

const writing = { ...sizesOption, who: 'text', note: 'text', try: 'flag' } as const satisfies OptionTable;

interface Done {
  readonly before: Derived;
  readonly after: Derived;
  readonly change: Change;
  readonly tanks: readonly string[];
}

/** Does an act of a family, or only works it with `--try`. */
function actOnFamily(
  given: Arguments,
  asked: { readonly act: Act; readonly input: Record<string, unknown> },
  answer: (done: Done) => Outcome,
): Promise<Outcome> {
  return withBook(given, (book: Book) => {
    const before = derive(book.records(), today());
    const tanks = tanksOf(given, before.records);
    if (!tanks.ok) return refusal(tanks.fault);
    const input = Object.entries({ ...asked.input, who: given.text('who'), note: given.text('note') });
    const done = runAct(asked.act, before, Object.fromEntries(input.filter(([, value]) => value !== undefined)));
    if (!done.ok) return refusedAct(done.fault);
    const says = given.flag('try') ? undefined : writeChange(book, done.value);
    if (says !== undefined) return refusal(says);
    const after = before.update(applyChange(before.records, done.value));
    return answer({ before, after, change: done.value, tanks: tanks.value });
  });
}

const forkCommand: Command = {
  name: 'recipe fork',
  usage:
    'recipe fork H1 [H5] [--title T] [--note T] [--animals A3] [--tanks T01,T02] [--season 10-01..03-31] [--who R-builder] [--try]: makes a recipe that holds only what differs from another',
  options: {
    ...bookOption,
    who: 'text',
    note: 'text',
    try: 'flag',
    title: 'text',
    animals: 'text',
    tanks: 'text',
    season: 'text',
  },
  misuse: (given) =>
    wordsMisuse(given, ['recipe to start from, as H1'], 1) ??
    (given.text('season') === undefined || seasonOf(given) ? undefined : '--season: write it as 10-01..03-31.'),
  run: (given) => {
    const [recipe, id] = given.words;
    const input = {
      recipe,
      id,
      title: given.text('title'),
      animalKind: given.text('animals'),
      tanks: listOf(given, 'tanks'),
      season: seasonOf(given),
    };
    return actOnFamily(given, { act: forkRecipe as Act, input }, ({ change, after }) => forkedAnswer(change, after));
  },
};

function seasonOf(given: Arguments): { readonly from: string; readonly to: string } | undefined {
  const [, from, to] = /^(\d\d-\d\d)\.\.(\d\d-\d\d)$/.exec(given.text('season') ?? '') ?? [];
  return from !== undefined && to !== undefined ? { from, to } : undefined;
}

function forkedAnswer(change: Change, { records }: Derived): Outcome {
  const made = change.added.flatMap((each) => (each.kind === 'recipe' ? [each.record] : []))[0];
  if (!made) return refusal('No recipe was made.');
  const { id, title, parent = '', note, animalKind, tanks, season } = made;
  return {
    is: 'answer',
    json: {
      recipe: id,
      title,
      parent,
      note,
      animalKind: animalKind ?? null,
      tanks: tanks ?? [],
      season: season ?? null,
      ...counts(records, id),
    },
    table: () => `${id} ${title}: made from ${parent}, with all its ${linesOf(records, id).length} lines.`,
  };
}

const takeCommand: Command = {
  name: 'recipe take',
  usage:
    'recipe take H5 [--lines litter,capping] [--keep] [--tanks stay|take] [--sizes T07] [--note T] [--who R-builder] [--try]: takes lines as its parent has them, by itself those that the parent changed since; with --keep its own stay',
  options: { ...writing, lines: 'text', keep: 'flag', tanks: 'text' },
  misuse: (given) => wordsMisuse(given, ['recipe, as H5']),
  run: (given) => {
    const [recipe = ''] = given.words;
    const input = { recipe, lines: listOf(given, 'lines'), keep: given.flag('keep'), tanks: given.text('tanks') };
    return actOnFamily(given, { act: takeFromParent as Act, input }, (done) => movedAnswer(recipe, recipe, done));
  },
};

const sendCommand: Command = {
  name: 'recipe send',
  usage:
    'recipe send H5 [--lines litter,capping] [--tanks stay|same|all] [--of T01] [--sizes T07] [--note T] [--who R-builder] [--try]: has the parent take what differs in a recipe',
  options: { ...writing, lines: 'text', tanks: 'text', of: 'text' },
  misuse: (given) => wordsMisuse(given, ['recipe, as H5']),
  run: (given) => {
    const [recipe = ''] = given.words;
    const input = { recipe, lines: listOf(given, 'lines'), tanks: given.text('tanks'), of: given.text('of') };
    return actOnFamily(given, { act: sendToParent as Act, input }, (done) =>
      movedAnswer(recipe, done.before.records.recipe.get(recipe)?.parent ?? recipe, done),
    );
  },
};

/** What became otherwise in the recipe that was written, and the jobs that it touches. */
function movedAnswer(asked: string, written: string, { before, after, change, tanks }: Done): Outcome {
  const compared: Compared = {
    left: { records: before.records, recipe: written },
    right: { records: after.records, recipe: written },
    tanks,
  };
  const touched = touchedBy(before, after.records);
  return {
    is: 'answer',
    json: {
      recipe: asked,
      parent: before.records.recipe.get(asked)?.parent ?? null,
      does: change.label,
      ...diffJson(compared),
      jobs: touched.map((each) => touchedJson(each, before)),
    },
    table: () =>
      [
        `${change.label}.`,
        diffTable(compared, before),
        ...(touched.length === 0 ? [] : [jobsTable(touched, before)]),
      ].join('\n'),
  };
}

function jobsTable(touched: readonly TouchedJob[], derived: Derived): string {
  return textTable(
    ['job', 'state', 'will', 'effect'],
    touched.map(({ job, will, effect }) => [job.id, job.state, will, effect ? effectWords(effect, derived) : '']),
  );
}

const logCommand: Command = {
  name: 'recipe log',
  usage: 'recipe log H5: what was done to a recipe, when and by whom: edits, from its parent, taken and sent up',
  options: bookOption,
  misuse: (given) => wordsMisuse(given, ['recipe, as H5']),
  run: (given) =>
    withBook(given, (book) => {
      const derived = derive(book.records(), today());
      const [recipe = ''] = given.words;
      if (!derived.records.recipe.has(recipe)) return refusal(noRecipe(recipe, derived.records));
      const log = houseLog(derived.records, recipe);
      return {
        is: 'answer',
        json: log.map(logJson),
        table: () =>
          log.length === 0
            ? `Nothing was done to ${recipe} yet.`
            : textTable(
                ['change', 'on', 'in force', 'what', 'by', 'note'],
                log.map((each) => [
                  each.id,
                  writeDay(each.on, derived.display.dateOrder),
                  each.inForceOn === undefined ? 'proposed' : writeDay(each.inForceOn, derived.display.dateOrder),
                  changeWords(each, derived.display),
                  each.by ?? '',
                  each.note,
                ]),
              ),
      };
    }),
};

export const recipeCommands: readonly Command[] = [
  listCommand,
  diffCommand,
  forkCommand,
  takeCommand,
  sendCommand,
  logCommand,
];
