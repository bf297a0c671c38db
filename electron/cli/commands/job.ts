import { idsOf } from '#shared-calc/acts/act.ts';
import { copyJob, newJob, recordDeposit, setSizes, setValues } from '#shared-calc/acts/job-acts.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { readCoins } from '#shared-calc/buy/coins.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import { readWriting, type Writing } from '#shared-calc/jobs/read-writing.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Line, LocalValue } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Command } from '#electron/cli/command.ts';
import { actOnJob, type JobAct } from '#electron/cli/job-acts.ts';
import { moveAct, smallDeposit } from '#electron/cli/job-notices.ts';
import { reasonOf, reasonOptions } from '#electron/cli/reason-options.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { jobSoldCommand } from './job-sold.ts';
import { jobSurveyCommand } from './job-survey.ts';
import { bookOption } from '#electron/cli/with-book.ts';

/** Creates a job from an enquiry. Values set here are the client's unless stated. */
const jobNewCommand: Command = {
  name: 'job new',
  usage:
    'job new --title T --sizes T05,T07x2 [--recipe H1] [--kit K] [--set line=RULE] [--handover DATE] [--client C] [--by client|us]: a new job',
  options: {
    ...bookOption,
    title: 'text',
    sizes: 'text',
    recipe: 'text',
    kit: 'text',
    set: 'texts',
    handover: 'text',
    client: 'text',
    by: 'text',
  },
  misuse: (given) => spare(given, 0) ?? lacking(given, ['title', 'sizes']) ?? byMisuse(given),
  run: (given) =>
    actOnJob(given, (derived) => {
      const sizes = readSizes(given.text('sizes') ?? '', derived.records);
      const recipe = given.text('recipe') ?? 'H1';
      const writings = readWritings(given.texts('set'));
      const kit = kitWriting(linesOf(derived.records, recipe), given.text('kit'));
      if (!sizes.ok) return sizes;
      if (!writings.ok) return writings;
      if (!kit.ok) return kit;
      const [handover, client] = [given.text('handover'), given.text('client')];
      const made = newJob.run(derived, {
        title: given.text('title') ?? '',
        recipe,
        sizes: [...sizes.value],
        writings: [...kit.value, ...writings.value],
        by: byOf(given),
        ...(handover !== undefined && { handover }),
        ...(client !== undefined && { client }),
      });
      return made.ok ? ok(jobMade(made.value)) : made;
    }),
};

/** Overrides cells of a job: `line=RULE` for the whole job, `T07.line=RULE` for one size. */
const jobSetCommand: Command = {
  name: 'job set',
  usage:
    'job set J01 line=RULE T07.line=RULE ... [--by client|us]: writes boxes of a job over, as the client unless said',
  options: { ...bookOption, by: 'text' },
  misuse: (given) => (given.words.length < 2 ? 'Say which job and what: job set J01 line=RULE.' : byMisuse(given)),
  run: (given) => {
    const [job = '', ...texts] = given.words;
    return actOnJob(given, (derived) => {
      const writings = readWritings(texts);
      if (!writings.ok) return writings;
      const change = setValues.run(derived, { job, writings: writings.value, by: byOf(given) });
      return change.ok ? ok({ job, change: change.value }) : change;
    });
  },
};

/** Moves a job to its next state, or back. */
const jobStateCommand: Command = {
  name: 'job state',
  usage:
    'job state J01 accepted [--quote Q-0001A] [--as-issued] [--anyway REASON --who R-builder]: moves a job to a state (enquiry, surveyed, quoted, accepted, deposit in, ordered, ... closed), and says what stands against it; from built on, that needs a reason and who decides',
  options: { ...bookOption, ...reasonOptions, quote: 'text', 'as-issued': 'flag' },
  misuse: (given) => (given.words.length < 2 ? 'Say which job and its state: job state J01 accepted.' : undefined),
  run: (given) => {
    const [job = '', ...state] = given.words;
    return actOnJob(given, (derived) =>
      moveAct(derived, { job, state: state.join(' '), ...reasonOf(given), ...acceptanceOf(given) }),
    );
  },
};

/** Records a deposit with its date; a deposit opens the gate of the shopping run. */
const jobDepositCommand: Command = {
  name: 'job deposit',
  usage:
    'job deposit J01 650.00 [--on DATE] [--anyway REASON --who R-builder]: records a deposit, the job is deposit in, and says what stands against that',
  options: { ...bookOption, ...reasonOptions, on: 'text' },
  misuse: (given) => (given.words.length < 2 ? 'Say which job and how much: job deposit J01 650.00.' : spare(given, 2)),
  run: (given) => {
    const [job = '', text = ''] = given.words;
    return actOnJob(given, (derived) => {
      const { records } = derived;
      const coins = readCoins(text, workshopOf(records).coinDecimals);
      if (coins === undefined) return failed({ kind: 'not-an-amount', text });
      const change = recordDeposit.run(derived, { job, coins, on: given.text('on'), ...reasonOf(given) });
      return change.ok ? ok({ job, change: change.value, notices: smallDeposit(records, job, coins) }) : change;
    });
  },
};

/** Creates a job with the sizes and local values of another. */
const jobCopyCommand: Command = {
  name: 'job copy',
  usage: 'job copy J01: a new enquiry with the sizes and local values of another job',
  options: bookOption,
  misuse: (given) => (given.words.length < 1 ? 'Say which job: job copy J01.' : spare(given, 1)),
  run: (given) =>
    actOnJob(given, (derived) => {
      const made = copyJob.run(derived, { job: given.words[0] ?? '' });
      return made.ok ? ok(jobMade(made.value)) : made;
    }),
};

/** Sets the sizes of a job, in this order. */
const jobSizesCommand: Command = {
  name: 'job sizes',
  usage: 'job sizes J01 T05,T07x2: gives a job these sizes; one that stays keeps its local values',
  options: bookOption,
  misuse: (given) => (given.words.length < 2 ? 'Say which job and its sizes: job sizes J01 T05,T07.' : undefined),
  run: (given) => {
    const [job = '', ...sizes] = given.words;
    return actOnJob(given, (derived) => {
      const wanted = readSizes(sizes.join(','), derived.records);
      if (!wanted.ok) return wanted;
      const change = setSizes.run(derived, { job, sizes: [...wanted.value] });
      return change.ok ? ok({ job, change: change.value }) : change;
    });
  },
};

export const jobCommands: readonly Command[] = [
  jobNewCommand,
  jobSetCommand,
  jobStateCommand,
  jobDepositCommand,
  jobCopyCommand,
  jobSizesCommand,
  jobSurveyCommand,
  jobSoldCommand,
];

function acceptanceOf(given: Arguments) {
  const quote = given.text('quote');
  return { ...(quote !== undefined && { quote }), ...(given.flag('as-issued') && { asIssued: true }) };
}

/** The job that a change adds. */
function jobMade(change: Change): JobAct {
  return { job: idsOf(change)[0] ?? '', change };
}

type TypedWriting = Omit<Writing, 'text'> & { readonly text: string | null };

function kitWriting(lines: readonly Line[], kit: string | undefined): Result<readonly TypedWriting[], JobFault> {
  if (kit === undefined) return ok([]);
  const line = lineFor(lines, 'kit');
  return line ? ok([{ line: line.name, text: kit }]) : failed({ kind: 'not-given', use: 'kit' });
}

function readWritings(texts: readonly string[]): Result<TypedWriting[], JobFault> {
  const writings: TypedWriting[] = [];
  for (const text of texts) {
    const writing = readWriting(text);
    if (!writing.ok) return writing;
    writings.push({ ...writing.value, text: writing.value.text ?? null });
  }
  return ok(writings);
}

function byOf(given: Arguments): LocalValue['by'] {
  return given.text('by') === 'us' ? 'us' : 'client';
}

function byMisuse(given: Arguments): string | undefined {
  const by = given.text('by') ?? 'client';
  return by === 'client' || by === 'us' ? undefined : `--by ${by}: choose client or us.`;
}

function lacking(given: Arguments, names: readonly string[]): string | undefined {
  const lacks = names.find((name) => given.text(name) === undefined);
  return lacks === undefined ? undefined : `A new job needs --${lacks}: job new --title "Reading room" --sizes T05.`;
}

function spare(given: Arguments, wanted: number): string | undefined {
  const word = given.words[wanted];
  return word === undefined ? undefined : `What is ${word} for?`;
}
