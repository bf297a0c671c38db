import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { did } from '#shared-calc/acts/did-act.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Done } from '#shared-calc/records/records.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { readingOptions, readReadings } from '#electron/cli/read-readings.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { writeAct } from '#electron/cli/write-act.ts';
import { today } from '#electron/service/today.ts';

/** Writes down what was done; a step that is over moves its job on. */
export const didCommand: Command = {
  name: 'did',
  usage:
    'did --job J02 | --tub K1 | --order O-0001 --step panel [--minutes 90] [--who R-builder] [--name Mara] [--ends] [--on DATE] [--note T] [--anyway REASON] [--low "21 degC"] [--drained "1.2 L"] ...: writes down what was done; --ends: the step is over, and its job moves on',
  options: {
    ...bookOption,
    ...readingOptions,
    job: 'text',
    tub: 'text',
    order: 'text',
    size: 'text',
    step: 'text',
    minutes: 'text',
    who: 'text',
    name: 'text',
    ends: 'flag',
    on: 'text',
    note: 'text',
    anyway: 'text',
  },
  misuse: (given) => {
    if (given.words.length > 0) return `What is ${given.words[0]} for?`;
    return given.text('step') === undefined ? 'Say which step: did --job J02 --step panel.' : undefined;
  },
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      if (!on.ok) return refusal(on.fault);
      const readings = readReadings(given);
      if (!readings.ok) return refusal(readings.fault);
      const derived = derive(book.records(), on.value ?? today());
      const written = writeAct(book, derived, { act: did, input: inputOf(given, readings.value) });
      return written.ok ? answer(derived, written.value) : written.fault;
    }),
};

const texts = ['job', 'tub', 'order', 'size', 'step', 'who', 'name', 'on', 'note', 'anyway'] as const;

function inputOf(given: Arguments, readings: Done['readings']): Readonly<Record<string, unknown>> {
  const told = texts.map((name) => [name, given.text(name)] as const);
  const minutes = given.text('minutes');
  return { ...Object.fromEntries(told), minutes: numberOf(minutes), readings, ends: given.flag('ends') };
}

/** A text that is no number goes to the act as it is, which says what it wants. */
function numberOf(text: string | undefined): number | string | undefined {
  return text !== undefined && /^\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}

/** The entry, and the state that its job came to by it. */
function answer({ records, display }: Pick<Derived, 'records' | 'display'>, { added, updated }: Change): Outcome {
  const entry = added.flatMap(({ kind, record }) => (kind === 'done' ? [record] : []))[0];
  if (!entry) throw new Error('nothing was written as done');
  const state = updated.flatMap((each) => (each.kind === 'job' && each.to.id === entry.job ? [each.to.state] : []))[0];
  const moved = state !== undefined && records.job.get(entry.job ?? '')?.state !== state;
  return {
    is: 'answer',
    json: { ...entry, ...(moved && { state }) },
    table: () => table(entry, moved ? state : undefined, display),
  };
}

function table(entry: Done, state: string | undefined, { dateOrder }: SaidDays): string {
  const { on, step, job, tub, order, who, name = '', minutes, ends } = entry;
  const took = minutes === undefined ? '' : `${minutes} min`;
  const rows = [[writeDay(on, dateOrder), job ?? tub ?? order ?? '', step, who, name, took, ends ? 'over' : '']];
  const head = textTable(['day', 'for', 'step', 'who', 'name', 'took', ''], rows);
  return state === undefined ? head : `${head}\n${job} is now ${state}.`;
}
