import { cultureBoard, sayLateCultures, type CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { nounOf } from '#shared-calc/fields/uses.ts';
import { animalsFor, isFlies, seedUseOf, type DemandFault } from '#shared-calc/prepare/culture-demands.ts';
import { SPRINGTAIL_KIND } from '#shared-calc/prepare/plan-facts.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import type { CultureDemand } from '#shared-calc/trade/cultures/cultures-to-keep.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { readBuildsFile } from '#electron/cli/builds-file.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
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
    'cultures --builds FILE.csv | --jobs J01,J02 [--kind C1] [--flies N] [--recipe H1] [--set line=RULE]: the culture board',
  options: { recipe, kit, set, on, ...bookOption, builds: 'text', jobs: 'text', kind: 'text', flies: 'text' },
  misuse,
  run: (given) =>
    withBook(given, (book) => {
      const board = boardOf(given, book.records());
      if (!board.ok) return refusal(...board.fault);
      return { is: 'answer', json: boardJson(board.value), table: () => boardTable(board.value) };
    }),
};

function misuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Builds are given as --builds FILE.csv, or --jobs J01,J02.`;
  const [builds, jobs, flies] = ['builds', 'jobs', 'flies'].map((name) => given.text(name));
  if (builds !== undefined && jobs !== undefined) return 'Give --builds or --jobs, not both.';
  if ((builds ?? jobs ?? flies) === undefined) return 'Say which builds: --builds FILE.csv, or --jobs J01,J02.';
  if (flies !== undefined && !/^\d{1,9}$/.test(flies)) return `--flies ${flies}: give whole flies a week, as 1400.`;
  return undefined;
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
  const board = cultureBoard({ kind: kind.value, demands: demands.value, on: wish.value.on, ...flies.value });
  return board.ok ? board : failed([board.fault]);
}

function readKind(id: string, records: Records): Result<CultureKind, Refused> {
  const kind = records.cultureKind.get(id);
  if (kind) return ok(kind);
  return failed([`No culture kind called ${id}.${didYouMean(id, records.cultureKind.keys())}`]);
}

function readFlies(given: Arguments, kind: CultureKind, records: Records) {
  const aWeek = given.text('flies');
  if (aWeek === undefined) return ok({});
  const flies = isFlies(kind) ? ok(kind) : readKind(FLY_KIND, records);
  return flies.ok ? ok({ flies: { kind: flies.value, aWeek: Number(aWeek) } }) : flies;
}

function readDemands(given: Arguments, kind: CultureKind, records: Records): Result<readonly CultureDemand[], Refused> {
  const builds = given.text('builds');
  const jobs = given.text('jobs');
  if (builds === undefined && jobs === undefined) return ok([]);
  if (isFlies(kind)) return failed([`${kind.label} is kept by the week, not for builds: give --flies.`]);
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
    demands.push({ date, animals: animals.value * count });
  }
  return ok(demands);
}

/** Each job's animals on the day of its build. */
function jobDemands(given: Arguments, kind: CultureKind, records: Records): Result<readonly CultureDemand[], Refused> {
  const demands: CultureDemand[] = [];
  for (const id of new Set((given.text('jobs') ?? '').split(',').map((each) => each.trim()))) {
    const demand = jobDemand(asOrder(given, 'job', id), kind, records);
    if (!demand.ok) return demand;
    demands.push(demand.value);
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
  const animals = animalsFor(
    bench,
    order.columns.map((column) => column.key),
    kind,
  );
  return animals.ok ? ok({ date: plan.value.build, animals: animals.value }) : failed([sayDemandFault(animals.fault)]);
}

/** The same options as those of one order. */
function asOrder(given: Arguments, name: 'job' | 'sizes', text: string): Arguments {
  return { ...given, text: (asked) => (asked === name ? text : given.text(asked)) };
}

function sayDemandFault(fault: DemandFault): string {
  if (fault.kind === 'no-amount-yet') return sayOrderFault(fault);
  return `No ${nounOf(fault.use)} is given in this recipe: how much ${fault.culture} a build takes is not known.`;
}

function boardJson({ demands, tubs, spare, startBy, founders, ...board }: CultureBoard): Record<string, unknown> {
  const { flyStarts, flyTubs } = board;
  return { demands, tubs, spare, startBy: startBy ?? null, founders, flyStarts, flyTubs };
}

function boardTable(board: CultureBoard): string {
  const { kind, demands, tubs, spare, startBy = '', founders, flyStarts, flyTubs } = board;
  const wanted = demands.map(({ date, animals }) => [date, String(animals)]);
  const starts = board.tubStarts.map((start, at) => [`tub ${at + 1}`, start]);
  return [
    ...(wanted.length === 0 && flyStarts === 0 ? [`No build asks for ${kind.label}, and no flies are wanted.`] : []),
    ...(wanted.length > 0 ? [textTable(['build', `${kind.label} (${nounOf(seedUseOf(kind))})`], wanted, [1]), ''] : []),
    ...(tubs > 0 ? [`tubs ${tubs}, spare ${spare}, start by ${startBy}, ${founders} animals to a tub`] : []),
    ...(starts.length > 0 ? [textTable(['', 'start by'], starts)] : []),
    ...(flyStarts > 0 ? [`flies: ${flyStarts} tubs set up a week, ${flyTubs} on the shelf`] : []),
    ...sayLateCultures(board),
  ].join('\n');
}
