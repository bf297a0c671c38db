import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Act } from '#shared-calc/acts/act.ts';
import { countTub, harvestTub } from '#shared-calc/acts/tub-moves.ts';
import { endTub, startTub } from '#shared-calc/acts/tub-acts.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { standingOn, tubsOf, type StandingTub } from '#shared-calc/prepare/standing-tub.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { eachOnce } from '#shared-calc/cautions/all-cautions.ts';
import { cultureCautions } from '#shared-calc/prepare/say-cultures.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import { animalsJson } from '#electron/cli/culture-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { readDegC } from '#electron/cli/read-deg-c.ts';
import { readDay } from '#electron/cli/read-day.ts';
import type { Arguments, OptionTable } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { wordsMisuse } from '#electron/cli/words-misuse.ts';
import { writeAct } from '#electron/cli/write-act.ts';
import { today } from '#electron/service/today.ts';

const onOption = { ...bookOption, on: 'text' } as const satisfies OptionTable;

const startCommand: Command = {
  name: 'tub start',
  usage:
    'tub start C1 [--founders 1250] [--way split|new|bought] [--from K1] [--degC "22 degC"] [--on DATE]: starts a tub',
  options: { ...onOption, founders: 'text', way: 'text', from: 'text', degC: 'text' },
  misuse: (given) => wordsMisuse(given, ['kind of culture, as C1']),
  run: (given) => {
    const degC = readDegC(given);
    if (!degC.ok) return refusal(degC.fault);
    return done(given, startTub, {
      kind: given.words[0],
      founders: count(given.text('founders')),
      way: given.text('way'),
      from: given.text('from'),
      degC: degC.value,
    });
  },
};

const harvestCommand: Command = {
  name: 'tub harvest',
  usage:
    'tub harvest K1 [2130] [--job J02] [--sold] [--on DATE]: takes animals out of a tub, all that it may give by itself',
  options: { ...onOption, job: 'text', sold: 'flag' },
  misuse: (given) => wordsMisuse(given, ['tub, as K1'], 1),
  run: (given) =>
    done(given, harvestTub, {
      tub: given.words[0],
      amount: count(given.words[1]),
      job: given.text('job'),
      sold: given.flag('sold'),
    }),
};

const countCommand: Command = {
  name: 'tub count',
  usage: 'tub count K1 4000 [--on DATE]: writes down what was counted in a tub',
  options: onOption,
  misuse: (given) => wordsMisuse(given, ['tub, as K1', 'count, as 4000']),
  run: (given) => done(given, countTub, { tub: given.words[0], animals: count(given.words[1]) }),
};

const endCommand: Command = {
  name: 'tub end',
  usage: 'tub end K1 [--on DATE]: ends a tub',
  options: onOption,
  misuse: (given) => wordsMisuse(given, ['tub, as K1']),
  run: (given) => done(given, endTub, { tub: given.words[0] }),
};

const listCommand: Command = {
  name: 'tub list',
  usage: 'tub list [--on DATE]: the tubs that stand, what each has and may give',
  options: onOption,
  misuse: (given) => wordsMisuse(given, []),
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      return on.ok ? answer(book.records(), on.value ?? today()) : refusal(on.fault);
    }),
};

export const tubCommands: readonly Command[] = [startCommand, harvestCommand, countCommand, endCommand, listCommand];

/** A text that is no number goes to the act as it is, which says what it wants. */
function count(text: string | undefined): number | string | undefined {
  return text !== undefined && /^\d[\d.]*$/.test(text) ? Number(text) : text;
}

/** Does an act on the day asked, writes it, and answers with the tubs of that day. */
function done<I>(given: Arguments, act: Act<I>, input: Readonly<Record<string, unknown>>): Promise<Outcome> {
  return withBook(given, (book) => {
    const on = readDay(given, 'on');
    if (!on.ok) return refusal(on.fault);
    const day = on.value ?? today();
    const written = writeAct(book, derive(book.records(), day), { act, input: { ...input, on: on.value } });
    return written.ok ? answer(book.records(), day) : written.fault;
  });
}

interface ListedTub {
  readonly kind: CultureKind;
  readonly standing: StandingTub;
}

function answer(records: Records, on: Day): Outcome {
  const tubs = [...records.cultureKind.values()].flatMap((kind) =>
    tubsOf(records, kind.id, on).map((tub): ListedTub => ({ kind, standing: standingOn(tub, kind, { on }) })),
  );
  return {
    is: 'answer',
    json: tubs.map((tub) => tubJson(tub, records)),
    table: () => tubTable(tubs, displayOf(workshopOf(records))),
  };
}

function tubJson({ kind, standing }: ListedTub, records: Records): Record<string, unknown> {
  const { tub: id, startedOn: started, spare, keptFor = null, readyOn, nextOn = null, feedOn = null, is } = standing;
  const tub = records.tub.get(id);
  const { way, founders, degC = null, place } = tub ?? {};
  return {
    tub: id,
    kind: kind.id,
    started,
    way,
    founders,
    degC,
    place,
    spare,
    job: keptFor,
    ...animalsJson(standing),
    is,
    readyOn,
    nextOn,
    feedOn,
    warnings: [],
    cautions: cultureCautions(kind).map(cautionJson),
  };
}

function tubTable(tubs: readonly ListedTub[], display: Display): string {
  if (tubs.length === 0) return 'No tub stands.';
  const written = (day?: Day) => (day === undefined ? '' : writeDay(day, display.dateOrder));
  const rows = tubs.map(({ kind, standing: { tub, startedOn, animals, mayTake, nextOn, feedOn, is } }) => [
    tub,
    kind.label,
    written(startedOn),
    shown(animals),
    shown(mayTake),
    written(nextOn),
    written(feedOn),
    is,
  ]);
  const cautions = eachOnce(tubs.flatMap(({ kind }) => cultureCautions(kind)));
  return [
    textTable(['tub', 'kind', 'started', 'animals', 'may give', 'next harvest', 'feed', ''], rows, [3, 4]),
    ...underFigures([], cautions, display),
  ].join('\n');
}

function shown(animals: number | undefined): string {
  return animals === undefined ? 'not known' : writeNumber(animals, 0);
}
