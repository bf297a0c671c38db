import type { Day } from '#shared-calc/calendar/day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { answerHouse, dropHouse, forceHouse, houseLog, proposeHouse } from '#shared-calc/acts/house-acts.ts';
import type { Act } from '#shared-calc/acts/act.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { effectOfTaking, jobsTouched, type TouchedJob } from '#shared-calc/derive/house-offers.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { HouseChange } from '#shared-calc/records/records.ts';
import { changeWords, effectWords } from '#shared-calc/papers/house-said.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import type { Book } from '#electron/book/book.ts';
import type { Command } from '#electron/cli/command.ts';
import { changeTexts, effectJson, logJson, touchedJson } from '#electron/cli/house-answer.ts';
import { jobJson, jobTable, listedJobs, refusedAct, writeChange } from '#electron/cli/job-acts.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { readWriting } from '#shared-calc/jobs/read-writing.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { today } from '#electron/service/today.ts';

/** Writes an act of a house; `answer` gets the book after it. */
async function actOnHouse<I>(
  given: Arguments,
  act: Act<I>,
  input: (derived: Derived) => I,
  answer: (written: { readonly derived: Derived; readonly before: Derived; readonly change: Change }) => Outcome,
): Promise<Outcome> {
  return withBook(given, (book: Book) => {
    const before = derive(book.records(), today());
    const done = act.run(before, input(before));
    if (!done.ok) return refusedAct(done.fault);
    const says = writeChange(book, done.value);
    if (says !== undefined) return refusal(says);
    return answer({ derived: before.update(book.records()), before, change: done.value });
  });
}

function changesAdded(change: Change): readonly HouseChange[] {
  return change.added.flatMap((each) => (each.kind === 'houseChange' ? [each.record] : []));
}

const proposeCommand: Command = {
  name: 'house propose',
  usage:
    'house propose H1 litter="20 mm" [--note T] [--from J05]: proposes a change of a house recipe, and says what it is to each job; writes no line',
  options: { ...bookOption, note: 'text', from: 'text' },
  misuse: (given) =>
    given.words.length < 2 ? 'Say which recipe and what: house propose H1 litter="20 mm".' : badWriting(given),
  run: (given) => {
    const [recipe = '', ...texts] = given.words;
    const lines = texts.map((text) => readWriting(text)).flatMap((each) => (each.ok ? [each.value] : []));
    const fromJob = given.text('from');
    const input = {
      recipe,
      lines: lines.map(({ line, text = '' }) => ({ line, text })),
      note: given.text('note') ?? '',
      ...(fromJob !== undefined && { fromJob }),
    };
    return actOnHouse(
      given,
      proposeHouse,
      () => input,
      ({ before, change }) => {
        const changes = changesAdded(change);
        return proposedAnswer(before, recipe, changes);
      },
    );
  },
};

function badWriting(given: Arguments): string | undefined {
  const [, ...texts] = given.words;
  for (const text of texts) {
    const writing = readWriting(text);
    if (!writing.ok) return sayJobFault(writing.fault);
    if (writing.value.column !== undefined) return `${text}: a house line is of no size: write line=RULE.`;
  }
  return undefined;
}

function proposedAnswer(derived: Derived, recipe: string, changes: readonly HouseChange[]): Outcome {
  const touched = jobsTouched(derived, recipe, changes);
  const ids = changes.map(({ id }) => id);
  return {
    is: 'answer',
    json: {
      change: ids[0],
      ...(ids.length > 1 && { changes: ids }),
      recipe,
      lines: changes.map(changeTexts),
      jobs: touched.map((each) => touchedJson(each, derived)),
    },
    table: () =>
      [
        ...changes.map((change) => `${change.id} proposed for ${recipe}: ${changeWords(change, derived.display)}`),
        textTable(
          ['job', 'state', 'will', 'effect'],
          touched.map((each) => touchedRow(each, derived)),
        ),
      ].join('\n'),
    notices: [],
  };
}

function touchedRow({ job, will, effect }: TouchedJob, derived: Derived): readonly string[] {
  return [job.id, job.state, will, effect ? effectWords(effect, derived) : ''];
}

const forceCommand: Command = {
  name: 'house force',
  usage: 'house force HC-0001 [--on DATE]: puts a proposed change in force; sold jobs are offered it',
  options: { ...bookOption, on: 'text' },
  misuse: (given) => oneChange(given, 'house force HC-0001'),
  run: (given) => {
    const on = given.text('on');
    const change = given.words[0] ?? '';
    const input = { change, ...(on !== undefined && { on }) };
    return actOnHouse(
      given,
      forceHouse,
      () => input,
      ({ derived, before }) => {
        const record = derived.records.houseChange.get(change.toUpperCase());
        return record ? forcedAnswer(before, record) : refusal(`${change} is not in the log.`);
      },
    );
  },
};

function forcedAnswer(before: Derived, change: HouseChange): Outcome {
  const touched = jobsTouched(before, change.recipe, [change]);
  return {
    is: 'answer',
    json: { ...logJson(change), jobs: touched.map((each) => touchedJson(each, before)) },
    table: () =>
      [
        `${change.id} in force since ${change.inForceOn ?? ''}: ${changeWords(change, before.display)}`,
        textTable(
          ['job', 'state', 'will', 'effect'],
          touched.map((each) => touchedRow(each, before)),
        ),
      ].join('\n'),
    notices: [],
  };
}

const dropCommand: Command = {
  name: 'house drop',
  usage: 'house drop HC-0001: takes a proposed change away',
  options: bookOption,
  misuse: (given) => oneChange(given, 'house drop HC-0001'),
  run: (given) => {
    const change = given.words[0] ?? '';
    return actOnHouse(
      given,
      dropHouse,
      () => ({ change }),
      ({ before }) => {
        const record = before.records.houseChange.get(change.toUpperCase());
        return {
          is: 'answer',
          json: { change: change.toUpperCase(), dropped: true, ...(record && changeTexts(record)) },
          table: () => `${change.toUpperCase()} dropped${record ? `: ${changeWords(record, before.display)}` : ''}`,
          notices: [],
        };
      },
    );
  },
};

function oneChange(given: Arguments, example: string): string | undefined {
  return given.words.length === 1 ? undefined : `Say which change: ${example}.`;
}

const changesCommand: Command = {
  name: 'house changes',
  usage: 'house changes [H1]: the log of a house recipe, with notes and the answers of sold jobs',
  options: bookOption,
  misuse: (given) => (given.words.length > 1 ? `What is ${given.words[1]} for?` : undefined),
  run: (given) =>
    withBook(given, (book) => {
      const [recipe] = given.words;
      const records = book.records();
      if (recipe !== undefined && !records.recipe.has(recipe)) {
        return refusal(`No recipe called ${recipe}. There are: ${[...records.recipe.keys()].join(', ')}.`);
      }
      const changes = houseLog(records, recipe);
      return {
        is: 'answer',
        json: changes.map(logJson),
        table: () =>
          changes.length === 0
            ? 'No change of a house is written down yet.'
            : textTable(
                ['change', 'recipe', 'on', 'in force', 'what', 'note', 'answers'],
                changes.map((change) => logRow(change, displayOf(workshopOf(records)))),
              ),
        notices: [],
      };
    }),
};

function logRow(change: HouseChange, display: Display): readonly string[] {
  const { id, recipe, on, inForceOn, note, answers } = change;
  const written = (day: Day) => writeDay(day, display.dateOrder);
  const said = answers.map(({ job, answer, on: day, by }) => `${job} ${answer} ${written(day)} ${by}`);
  const inForce = inForceOn === undefined ? 'proposed' : written(inForceOn);
  return [id, recipe, written(on), inForce, changeWords(change, display), note, said.join(', ')];
}

const answerCommand: Command = {
  name: 'house answer',
  usage:
    'house answer HC-0001 J02 take|leave [--who R-builder]: takes a change of the house into a sold job, or leaves it, and says what taking it does',
  options: { ...bookOption, who: 'text' },
  misuse: (given) => {
    const answer = given.words[2];
    if (given.words.length !== 3) return 'Say which change, which job and the answer: house answer HC-0001 J02 take.';
    return answer === 'take' || answer === 'leave' ? undefined : `${answer}: answer take or leave.`;
  },
  run: (given) => {
    const [change = '', job = '', answer = ''] = given.words;
    const who = given.text('who') ?? 'R-builder';
    const input = { change, job, answer: answer === 'take' ? ('take' as const) : ('leave' as const), who };
    return actOnHouse(
      given,
      answerHouse,
      () => input,
      ({ derived, before }) => answeredWith(before, derived, input),
    );
  },
};

interface Answered {
  readonly change: string;
  readonly job: string;
  readonly answer: 'take' | 'leave';
}

function answeredWith(before: Derived, derived: Derived, { change: id, job: jobId, answer }: Answered): Outcome {
  const { workshop } = derived;
  const summary = listedJobs(derived).find(({ job }) => job === jobId);
  const change = before.records.houseChange.get(id.toUpperCase());
  if (!summary || !change) return refusal(`${id} is not in the log.`);
  const effect = effectOfTaking(before, jobId, change);
  return {
    is: 'answer',
    json: { ...jobJson(summary), change: change.id, answer, effect: effectJson(effect, workshop) },
    table: () =>
      [
        jobTable([summary], derived.display),
        `${jobId} ${answer === 'take' ? 'takes' : 'leaves'} ${change.id}: ${effectWords(effect, derived)}`,
      ].join('\n'),
    notices: [],
  };
}

export const houseCommands: readonly Command[] = [
  proposeCommand,
  forceCommand,
  dropCommand,
  changesCommand,
  answerCommand,
];
