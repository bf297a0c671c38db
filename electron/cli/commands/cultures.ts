import { cultureBoard, type CultureBoard, type CultureWish } from '#shared-calc/prepare/culture-board.ts';
import { takenFor } from '#shared-calc/derive/kind-demands.ts';
import { nounOf } from '#shared-calc/fields/uses.ts';
import {
  animalsFor,
  isFlies,
  seedingOf,
  type CultureDemand,
  type DemandFault,
} from '#shared-calc/prepare/culture-demands.ts';
import { eatenTogether, preyEaten } from '#shared-calc/prepare/prey-eaten.ts';
import type { FlyWish } from '#shared-calc/prepare/fly-shelf.ts';
import { portionOf } from '#shared-calc/prepare/portion-of.ts';
import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { tubsOf } from '#shared-calc/prepare/standing-tub.ts';
import { tubWays } from '#shared-calc/prepare/tub-ways.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { SPRINGTAIL_KIND } from '#shared-calc/prepare/plan-facts.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { readDegC } from '#electron/cli/read-deg-c.ts';
import { readTubsFile } from '#electron/cli/tubs-file.ts';
import { boardJson, boardTable } from '#electron/cli/culture-answer.ts';
import { readBuildsFile } from '#electron/cli/builds-file.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder } from '#electron/cli/work-order.ts';
import { planOf, readWish } from './prepare.ts';

/** The small fly is used, unless the requested kind is one of flies. */
const FLY_KIND = 'C5';

const { recipe, kit, set, on } = orderOptions;

/** Tubs to keep for dated builds, and fly tubs for a number of flies a week. */
export const culturesCommand: Command = {
  name: 'cultures',
  usage:
    'cultures --builds FILE.csv | --jobs J01,J02 [--kind C1] [--way split|new] [--tubs FILE.csv] [--degC "22 degC"] [--flies N [--from DATE]] [--recipe H1] [--set line=RULE]: the culture board',
  options: {
    recipe,
    kit,
    set,
    on,
    ...bookOption,
    builds: 'text',
    jobs: 'text',
    kind: 'text',
    way: 'text',
    tubs: 'text',
    degC: 'text',
    flies: 'text',
    from: 'text',
  },
  misuse,
  run: (given) =>
    withBook(given, (book) => {
      const board = boardOf(given, book.records());
      if (!board.ok) return refusal(...board.fault);
      const workshop = workshopOf(book.records());
      const { coinDecimals, currency } = workshop;
      const display = displayOf(workshop);
      const coins = (amount: number) => `${coinsText(amount, coinDecimals)} ${currency}`;
      return {
        is: 'answer',
        json: boardJson(board.value, coinDecimals),
        table: () => boardTable(board.value, { coins, display }),
      };
    }),
};

function misuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Builds are given as --builds FILE.csv, or --jobs J01,J02.`;
  const [builds, jobs, flies] = ['builds', 'jobs', 'flies'].map((name) => given.text(name));
  if (builds !== undefined && jobs !== undefined) return 'Give --builds or --jobs, not both.';
  if ((builds ?? jobs ?? flies) === undefined) return 'Say which builds: --builds FILE.csv, or --jobs J01,J02.';
  return flyMisuse(given) ?? wayMisuse(given.text('way'));
}

function flyMisuse(given: Arguments): string | undefined {
  const flies = given.text('flies');
  if (flies !== undefined)
    return /^\d{1,9}$/.test(flies) ? undefined : `--flies ${flies}: give whole flies a week, as 1400.`;
  return given.text('from') === undefined ? undefined : '--from is the first day of flies: give --flies.';
}

function wayMisuse(way: string | undefined): string | undefined {
  if (way === undefined || tubWays.some((each) => each === way)) return undefined;
  return `--way ${way}: choose split or new.${didYouMean(way, tubWays)}`;
}

type Refused = readonly string[];

function boardOf(given: Arguments, records: Records): Result<CultureBoard, Refused> {
  const kind = readKind(given.text('kind') ?? SPRINGTAIL_KIND, records);
  if (!kind.ok) return kind;
  const demands = readDemands(given, kind.value, records);
  if (!demands.ok) return demands;
  const flies = readFlies(given, kind.value, records);
  if (!flies.ok) return flies;
  const wish = readWish(given, undefined, records);
  if (!wish.ok) return failed([wish.fault]);
  const today = wish.value.on;
  const stood = readStanding(given, records, { kind: kind.value.id, on: today });
  if (!stood.ok) return stood;
  const board = cultureBoard({
    kind: kind.value,
    demands: demands.value,
    ...stood.value,
    way: given.text('way') === 'new' ? 'new' : 'split',
    portion: portionOf(records, kind.value, today),
    on: today,
    ...flies.value,
  });
  return board.ok ? board : failed([board.fault]);
}

/** The tubs of the book and of `--tubs`, in order of their start, and the temperature of `--degC`. */
function readStanding(
  given: Arguments,
  records: Records,
  { kind, on: day }: { readonly kind: string; readonly on: Day },
): Result<Pick<CultureWish, 'tubs' | 'degC'>, Refused> {
  const degC = readDegC(given);
  if (!degC.ok) return failed([degC.fault]);
  const file = given.text('tubs');
  const listed = file === undefined ? ok([]) : readTubsFile(file, records);
  if (!listed.ok) return listed;
  const tubs = [...tubsOf(records, kind, day), ...listed.value.filter((tub) => tub.kind === kind)];
  return ok({
    tubs: tubs.toSorted(byDay(({ startedOn }) => startedOn)),
    ...(degC.value !== undefined && { degC: degC.value }),
  });
}

function readKind(id: string, records: Records): Result<CultureKind, Refused> {
  const kind = records.cultureKind.get(id);
  if (kind) return ok(kind);
  return failed([`No culture kind called ${id}.${didYouMean(id, records.cultureKind.keys())}`]);
}

/** As many as asked for; on a board of flies, as many as the animals of the jobs eat. */
function readFlies(
  given: Arguments,
  kind: CultureKind,
  records: Records,
): Result<{ readonly flies?: FlyWish }, Refused> {
  const asked = given.text('flies');
  if (asked === undefined && !isFlies(kind)) return ok({});
  const flies = isFlies(kind) ? ok(kind) : readKind(FLY_KIND, records);
  if (!flies.ok) return flies;
  const aWeek = asked === undefined ? eatenByJobs(given, kind, records) : ok(Number(asked));
  if (!aWeek.ok) return aWeek;
  const from = readDay(given, 'from');
  if (!from.ok) return failed([from.fault]);
  const first = from.value === undefined ? {} : { from: from.value };
  return ok({ flies: { kind: flies.value, aWeek: aWeek.value, ...first } });
}

function byTheWeek({ label }: CultureKind): string {
  return `${label} is kept by the week, not for builds: give --flies.`;
}

/** Refused while a size says no number, or its kind no appetite: then nobody knows how many. */
function eatenByJobs(given: Arguments, kind: CultureKind, records: Records): Result<number, Refused> {
  const all = jobIds(given).map((id) => workOrder(asOrder(given, 'job', id), records));
  const fault = all.find((each) => !each.ok);
  if (fault && !fault.ok) return fault;
  const eaten = eatenTogether(all.flatMap((each) => (each.ok ? preyEaten(each.value.order.columns, kind.id) : [])));
  const [first] = eaten.unknown;
  if (first !== undefined) return failed([`How many the animals of ${first} eat is not known yet: give --flies.`]);
  return eaten.aWeek > 0 ? ok(Math.ceil(eaten.aWeek)) : failed([byTheWeek(kind)]);
}

function jobIds(given: Arguments): readonly string[] {
  const text = given.text('jobs');
  return text === undefined ? [] : [...new Set(text.split(',').map((each) => each.trim()))];
}

function readDemands(given: Arguments, kind: CultureKind, records: Records): Result<readonly CultureDemand[], Refused> {
  const builds = given.text('builds');
  const jobs = given.text('jobs');
  if (builds === undefined && jobs === undefined) return ok([]);
  if (isFlies(kind)) {
    if (builds === undefined) return ok([]);
    return failed([byTheWeek(kind)]);
  }
  return builds === undefined ? jobDemands(given, kind, records) : buildDemands({ given, kind, records, file: builds });
}

interface BoardRequest {
  readonly given: Arguments;
  readonly kind: CultureKind;
  readonly records: Records;
  readonly file: string;
}

/** Works all tanks of the file on one bench. */
function buildDemands({ given, kind, records, file }: BoardRequest): Result<readonly CultureDemand[], Refused> {
  const builds = readBuildsFile(file, records);
  if (!builds.ok || builds.value.length === 0) return builds.ok ? ok([]) : builds;
  const tanks = [...new Set(builds.value.map(({ tank }) => tank))];
  const worked = workOrder(asOrder(given, 'sizes', tanks.join(',')), records);
  if (!worked.ok) return worked;
  const demands: CultureDemand[] = [];
  for (const { date, tank, count } of builds.value) {
    const animals = animalsFor(worked.value.bench, [tank], kind);
    if (!animals.ok) return failed([sayDemandFault(animals.fault)]);
    const seeding = seedingOf(worked.value.bench, [tank], kind);
    demands.push({ date, animals: animals.value * count, ...(seeding && { seeding }) });
  }
  return ok(demands);
}

/** Each job's animals on the day of its build. */
function jobDemands(given: Arguments, kind: CultureKind, records: Records): Result<readonly CultureDemand[], Refused> {
  const demands: CultureDemand[] = [];
  for (const id of jobIds(given)) {
    const demand = jobDemand(asOrder(given, 'job', id), kind, records);
    if (!demand.ok) return demand;
    const animals = demand.value.animals - takenFor(records, id, kind);
    demands.push({ ...demand.value, animals: Math.max(0, animals), job: id });
  }
  return ok(demands);
}

function jobDemand(given: Arguments, kind: CultureKind, records: Records): Result<CultureDemand, Refused> {
  const worked = workOrder(given, records);
  if (!worked.ok) return worked;
  const { bench, order } = worked.value;
  const wish = readWish(given, records.job.get(order.jobId ?? ''), records);
  if (!wish.ok) return failed([wish.fault]);
  const plan = planOf(worked.value, wish.value, records);
  if (!plan.ok) return failed([plan.fault]);
  const keys = order.columns.map((column) => column.key);
  const animals = animalsFor(bench, keys, kind);
  if (!animals.ok) return failed([sayDemandFault(animals.fault)]);
  const seeding = seedingOf(bench, keys, kind);
  return ok({ date: plan.value.build, animals: animals.value, ...(seeding && { seeding }) });
}

/** The same options as those of one order. */
function asOrder(given: Arguments, name: 'job' | 'sizes', text: string): Arguments {
  return { ...given, text: (asked) => (asked === name ? text : given.text(asked)) };
}

function sayDemandFault(fault: DemandFault): string {
  if (fault.kind === 'no-amount-yet') return sayOrderFault(fault);
  return `No ${nounOf(fault.use)} is given in this recipe: how much ${fault.culture} a build takes is not known.`;
}
