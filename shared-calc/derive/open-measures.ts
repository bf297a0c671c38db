import { knownNeeds, knownWork } from '#shared-calc/bench/order-amounts.ts';
import { missingFigures, waitOf } from '#shared-calc/bench/waits.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { calledOf, type ColumnInput } from '#shared-calc/recipe/column.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { tankFieldOf } from '#shared-calc/recipe/tank-figures.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { Derived, DerivedJob } from './derived.ts';

type TankField = NonNullable<ReturnType<typeof tankFieldOf>>;

/** Where a missing measurement is written: in the tank book for every job, or in a cell of one job. */
export type MeasurePlace =
  | { readonly kind: 'tank'; readonly tank: string; readonly key: TankField }
  | { readonly kind: 'cell'; readonly job: string; readonly column: string };

/** A figure that amounts, hours or checks of jobs wait for, once for each place where it is written. */
export interface OpenMeasure {
  /** `T15, dam`; `J02 T05, litter depth` */
  readonly id: string;
  /** What is measured: `T15 Low tank`; `J02 Reading room, T05`. */
  readonly thing: string;
  readonly line: Line;
  readonly at: MeasurePlace;
  /** Amounts and minutes of all sizes without which no quote is whole. */
  readonly amounts: number;
  readonly checks: number;
  /** What they are called, each once. */
  readonly waiting: readonly string[];
  readonly jobs: readonly string[];
  /** What the quotes that it keeps open come to so far; left out if only checks wait. */
  readonly quotesCoins?: number;
}

/** A cell without a figure, with the lines of its size that wait for it. */
interface OpenCell {
  readonly line: Line;
  readonly column: ColumnInput;
  readonly amounts: readonly Line[];
  readonly checks: readonly Line[];
}

/** The measurements that jobs wait for, those first on which most hangs: amounts, then checks, then money. */
export function openMeasuresOf(derived: Derived, jobs: readonly string[]): readonly OpenMeasure[] {
  const found = new Map<string, OpenMeasure>();
  for (const id of jobs) {
    const job = derived.job(id);
    if (!job) continue;
    for (const cell of job.keys.flatMap((key) => openCells(job, key))) {
      const at = placeOf(job, cell);
      const key = JSON.stringify([at, at.kind === 'cell' && cell.line.name]);
      const before = found.get(key) ?? firstOf(derived, job, { ...cell, at });
      found.set(key, withCell(before, job, cell));
    }
  }
  return withOwnIds([...found.values()]).toSorted(byWaiting);
}

/** The same over every job that is not sold yet. */
export function allOpenMeasures(derived: Derived): readonly OpenMeasure[] {
  const jobs = [...derived.records.job.values()].filter(({ state }) => isBefore(state, 'accepted'));
  return openMeasuresOf(
    derived,
    jobs.map(({ id }) => id),
  );
}

function openCells({ bench, pricing }: DerivedJob, key: string): readonly OpenCell[] {
  const column = bench.input().columns.find((each) => each.key === key);
  if (!column) return [];
  const without = [...knownNeeds(bench, [key], pricing.prices).without, ...knownWork(bench, [key]).without];
  const waits = without.flatMap(({ line }) => {
    const wait = waitOf(bench, key, line.name);
    return wait?.isMissing ? [{ on: wait.line, line }] : [];
  });
  const amounts = Map.groupBy(waits, ({ on }) => on.name);
  const checks = new Map(missingFigures(bench, key).map((each) => [each.line.name, each.checks]));
  return bench.lines(key).flatMap((line) => {
    const [ofAmounts, ofChecks] = [amounts.get(line.name) ?? [], checks.get(line.name) ?? []];
    if (ofAmounts.length + ofChecks.length === 0) return [];
    // A figure that leads to no answer is not missing.
    if (bench.box(key, line.name).cause?.why !== 'missing') return [];
    return [{ line, column, amounts: ofAmounts.map((each) => each.line), checks: ofChecks }];
  });
}

/** A measurement of a tank that this job alone has emptied is written in the job. */
function placeOf({ job, bench }: DerivedJob, { line, column }: OpenCell): MeasurePlace {
  const key = tankFieldOf(line);
  const isOfTank = key !== undefined && bench.box(column.key, line.name).source === 'tank';
  return isOfTank ? { kind: 'tank', tank: column.tank.id, key } : { kind: 'cell', job: job.id, column: column.key };
}

function firstOf(
  { records }: Derived,
  { job }: DerivedJob,
  { line, column, at }: OpenCell & { readonly at: MeasurePlace },
): OpenMeasure {
  const size = calledOf(column);
  const names =
    at.kind === 'tank'
      ? { id: tankMeasureId(at.tank, at.key), thing: `${at.tank} ${records.tank.get(at.tank)?.label ?? ''}`.trimEnd() }
      : { id: cellMeasureId(job.id, size, line), thing: `${jobName(job)}, ${size}` };
  return { ...names, line, at, amounts: 0, checks: 0, waiting: [], jobs: [] };
}

function withCell(before: OpenMeasure, job: DerivedJob, { amounts, checks }: OpenCell): OpenMeasure {
  const { id } = job.job;
  const known = amounts.length > 0 && !before.jobs.includes(id) ? job.known() : undefined;
  const quotesCoins = known?.ok ? (before.quotesCoins ?? 0) + known.value.quote.grossCoins : before.quotesCoins;
  return {
    ...before,
    amounts: before.amounts + amounts.length,
    checks: before.checks + checks.length,
    waiting: [...new Set([...before.waiting, ...[...amounts, ...checks].map(lineLabel)])],
    jobs: [...new Set([...before.jobs, id])],
    ...(quotesCoins !== undefined && { quotesCoins }),
  };
}

/** The id of a measurement of the tank book: `T15, dam`. */
export function tankMeasureId(tank: string, key: TankField): string {
  return `${tank}, ${inSentence(recordFields.tank[key].heading)}`;
}

function cellMeasureId(job: string, size: string, line: Pick<Line, 'label' | 'name'>): string {
  return `${job} ${size}, ${inSentence(lineLabel(line))}`;
}

/** Two sizes of one name, or two lines of one label, are told apart. */
function withOwnIds(measures: readonly OpenMeasure[]): readonly OpenMeasure[] {
  const same = Map.groupBy(measures, ({ id }) => id);
  return measures.map((each) => {
    const { id, line, at } = each;
    if (at.kind === 'tank' || same.get(id)?.length === 1) return each;
    return { ...each, id: `${id} (${at.column}, ${line.name})` };
  });
}

function byWaiting(one: OpenMeasure, other: OpenMeasure): number {
  return (
    other.amounts - one.amounts || other.checks - one.checks || (other.quotesCoins ?? -1) - (one.quotesCoins ?? -1)
  );
}
