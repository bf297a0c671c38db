import type { CheckResult, CheckState } from '#shared-calc/bench/bench-types.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { restsOn, unsureAmong, type Unsure } from '#shared-calc/bench/rests-on.ts';
import { orderSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { rangeWords } from '#shared-calc/bench/range-words.ts';
import { shownUnit, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { unitBehind } from '#shared-calc/quantity/write-figure.ts';
import type { CheckPart, UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { checkMargin, leastRoom, type CheckMargin } from './check-margin.ts';
import { givenWords } from './given-words.ts';
import { heaviestParts, type MassPart } from './heaviest-parts.ts';
import { cureSeries, type Attempt, type Figures } from './mend-attempts.ts';

/** A change that would fix a check, or bring it nearer to holding. */
export interface Mend extends Attempt {
  /** What the check comes to with it. */
  readonly state: CheckState;
  readonly margin?: CheckMargin;
  /** The figure that the check minds, with the change, and its bad end: `hottest day 25.2 degC, at worst 26.4`. */
  readonly gives?: string;
  /**
   * Coins for all builds of the size, before tax for the price; below zero if it costs more. Not known without prices.
   */
  readonly savesCostCoins?: number;
  readonly savesPriceCoins?: number;
  /** Labels of checks that hold now and would not with it. */
  readonly breaks: readonly string[];
  /** One of them is a stop: a change that is not offered. */
  readonly stops: boolean;
}

export interface SheetRow extends CheckResult {
  readonly part: CheckPart;
  readonly margin?: CheckMargin;
  readonly unsure: Unsure;
  /** For a check that does not hold, or is not known yet. */
  readonly mends: readonly Mend[];
}

export interface LightReached {
  /** mol/m2/d at the plants. */
  readonly reached: number;
  readonly wanted: number;
}

/** The sheet of checks of one size. */
export interface CheckSheet {
  readonly rows: readonly SheetRow[];
  readonly light?: LightReached;
  /** Heaviest first; the parts to make lighter if the shelf does not hold. */
  readonly parts: readonly MassPart[];
}

export interface SheetTerms {
  readonly pricing: Pricing;
  readonly display: Display;
}

/**
 * What holds for a size, by how much, and what would fix what does not hold. Each change is tried on a bench of its
 * own, with the price worked out again. For each kind of change this gives the smallest that fixes the check, otherwise
 * the one with the most effect. If no single change is enough, it tries the first two together, then the first three
 * and so on.
 */
export function checkSheet(bench: Bench, column: string, terms: SheetTerms): CheckSheet {
  const size = bench.input().columns.find((each) => each.key === column);
  if (!size) throw new Error(`no column ${column}`);
  const trial = openTrial(bench, size, terms);
  const rows = checksOf(bench, column, terms.display).map((check) => {
    const margin = checkMargin(bench, column, check.line.name);
    const mends = check.state === 'holds' ? [] : atOnce(mendsOf(check.line, trial));
    const unsure = unsureAmong(restsOn(bench, column, check.line.name));
    return { ...check, part: check.line.part ?? 'other', ...(margin && { margin }), unsure, mends };
  });
  const light = lightReached(bench, column);
  return { rows, ...(light && { light }), parts: heaviestParts(bench, column) };
}

/**
 * What would fix one check of a size. Each change that is tried is a step of its own, so that a page can do something
 * more urgent between two of them.
 */
export function* mendsInSteps(
  bench: Bench,
  { column, check }: { readonly column: string; readonly check: Line },
  terms: SheetTerms,
): Steps<readonly Mend[]> {
  const size = bench.input().columns.find((each) => each.key === column);
  if (!size) return [];
  const trial = openTrial(bench, size, terms);
  yield;
  return yield* mendsOf(check, trial);
}

type Steps<T> = Generator<undefined, T, undefined>;

function atOnce<T>(steps: Steps<T>): T {
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

interface TriedMend {
  readonly checks: ReadonlyMap<string, CheckState>;
  readonly marginOf: (check: string) => CheckMargin | undefined;
  /** In words, the figure that a check minds. */
  readonly givesOf: (check: string) => string | undefined;
  readonly costCoins?: number;
  readonly netCoins?: number;
}

interface Trial {
  readonly figures: Figures;
  /** Names of the checks that stop a build. */
  readonly stops: ReadonlySet<string>;
  readonly before: TriedMend;
  readonly labelOf: (check: string) => string;
  readonly with: (attempt: Attempt) => TriedMend;
}

/** Tries changes on the one size, each on its own bench. */
function openTrial(bench: Bench, size: ColumnInput, terms: SheetTerms): Trial {
  const start = { ...bench.input(), columns: [size] };
  const lines = bench.lines(size.key);
  return {
    figures: { ...figuresOf(bench, size.key), said: (text) => inShownUnit(text, terms.display) },
    stops: new Set(lines.filter(({ level }) => level === 'stop').map(({ name }) => name)),
    before: triedOn(bench, size.key, terms),
    labelOf: (check) =>
      lines
        .filter(({ name }) => name === check)
        .map(lineLabel)
        .join(''),
    with: ({ changes }) => {
      const locals = new Map([...size.locals, ...changes.map(({ line, text }) => [line, text] as const)]);
      return triedOn(onceBench({ ...start, columns: [{ ...size, locals }] }), size.key, terms);
    },
  };
}

function figuresOf(bench: Bench, column: string): Figures {
  const lines = bench.lines(column);
  const box = (use: UseName) => {
    const line = lineFor(lines, use);
    return line && bench.box(column, line.name);
  };
  return {
    number: (use) => {
      const found = box(use);
      return typeof found?.value === 'number' ? fromBase(found.value, unitOf(found.line.unit)) : undefined;
    },
    word: (use) => {
      const value = box(use)?.value;
      return typeof value === 'number' ? undefined : value;
    },
    line: (use) => lineFor(lines, use)?.name ?? use,
  };
}

/** A figure of an attempt in the workshop's units; unchanged where its own unit is shown. */
function inShownUnit(text: string, display: Display): string {
  const read = readFigure(text, { unit: 'number' });
  if (!read.ok || shownUnit(read.value.unit.symbol, display) === read.value.unit.symbol) return text;
  return readUnits(givenWords(read.value.value, read.value.unit.symbol, display), display);
}

function triedOn(bench: Bench, column: string, { pricing, display }: SheetTerms): TriedMend {
  const sums = orderSums(bench, [column], pricing);
  const checks = checksOf(bench, column, display).map(({ line, state }) => [line.name, state] as const);
  const margins = new Map(checks.map(([name]) => [name, checkMargin(bench, column, name)]));
  return {
    checks: new Map(checks),
    marginOf: (check) => margins.get(check),
    givesOf: (check) => givesWords(bench, column, { margin: margins.get(check), display }),
    ...(sums.ok && { costCoins: sums.value.quote.costCoins, netCoins: sums.value.quote.netCoins }),
  };
}

interface Given {
  readonly margin: CheckMargin | undefined;
  readonly display: Display;
}

function givesWords(bench: Bench, column: string, { margin, display }: Given): string | undefined {
  if (margin?.line === undefined) return undefined;
  const { value, range, line } = bench.box(column, margin.line);
  if (typeof value !== 'number') return undefined;
  const label = inSentence(lineLabel(line));
  if (typeof range !== 'object') return `${label} ${showWithUnit(value, line.unit, display)}`;
  const side = (margin.worst ?? 0) < margin.has ? 'from' : 'to';
  const words = rangeWords({ value, range, unit: line.unit, side }, display);
  const behind = unitBehind(shownUnit(line.unit, display), display.currency);
  return `${label} ${words.likely}${behind}, at worst ${words[side]}`;
}

function* mendsOf({ name: check, cures = [] }: Line, trial: Trial): Steps<readonly Mend[]> {
  const mends: Mend[] = [];
  for (const cure of cures) {
    const tried = yield* triesUntilHolds(check, cureSeries[cure](trial.figures), trial);
    const best = bestOf(tried.filter(({ stops }) => !stops));
    if (best && helps(check, best, trial)) mends.push(best);
  }
  if (mends.some(({ state }) => state === 'holds')) return mends;
  const together = (yield* triesUntilHolds(check, joined(mends), trial)).at(-1);
  return together?.state === 'holds' ? [...mends, together] : mends;
}

/** The last of them holds, if one does. */
function bestOf(tried: readonly Mend[]): Mend | undefined {
  const last = tried.at(-1);
  return last?.state === 'holds' ? last : (bestUnsure(tried) ?? mostRoom(tried));
}

function helps(check: string, { state, margin }: Mend, { before }: Trial): boolean {
  const was = before.marginOf(check);
  const isBetter = stateOrder.indexOf(state) < stateOrder.indexOf(before.checks.get(check) ?? 'not known yet');
  return isBetter || (was !== undefined && roomOf(margin) > leastRoom(was) + 1e-9);
}

/** The first two together, the first three, and so on. */
function joined(mends: readonly Attempt[]): readonly Attempt[] {
  return mends.slice(1).map((_, at) => {
    const some = mends.slice(0, at + 2);
    return { says: some.map(({ says }) => says).join('; '), changes: some.flatMap(({ changes }) => changes) };
  });
}

function* triesUntilHolds(check: string, attempts: readonly Attempt[], trial: Trial): Steps<readonly Mend[]> {
  const mends: Mend[] = [];
  for (const attempt of attempts) {
    const mend = mendFrom(check, attempt, trial);
    mends.push(mend);
    if (mend.state === 'holds' && !mend.stops) break;
    yield;
  }
  return mends;
}

function mendFrom(check: string, attempt: Attempt, trial: Trial): Mend {
  const after = trial.with(attempt);
  const { before } = trial;
  const margin = after.marginOf(check);
  const isSet = attempt.changes.some(({ line }) => line === margin?.line);
  const gives = isSet ? undefined : after.givesOf(check);
  const breaks = [...before.checks].filter(([name, state]) => state === 'holds' && after.checks.get(name) !== 'holds');
  return {
    ...attempt,
    state: after.checks.get(check) ?? 'not known yet',
    ...(margin && { margin }),
    ...(gives !== undefined && { gives }),
    ...savings(before, after),
    breaks: breaks.map(([name]) => trial.labelOf(name)),
    stops: breaks.some(([name]) => trial.stops.has(name) && after.checks.get(name) === 'fails'),
  };
}

function savings(before: TriedMend, after: TriedMend): Pick<Mend, 'savesCostCoins' | 'savesPriceCoins'> {
  if (before.costCoins === undefined || after.costCoins === undefined) return {};
  return {
    savesCostCoins: before.costCoins - after.costCoins,
    savesPriceCoins: (before.netCoins ?? 0) - (after.netCoins ?? 0),
  };
}

/** Best first. */
const stateOrder: readonly CheckState[] = ['holds', 'may not hold', 'fails', 'not known yet'];

/** The one with most room of those with which the check holds at the likely figures, but not surely. */
function bestUnsure(mends: readonly Mend[]): Mend | undefined {
  return mostRoom(mends.filter(({ state }) => state === 'may not hold'));
}

function roomOf(margin: CheckMargin | undefined): number {
  return margin ? leastRoom(margin) : -Infinity;
}

function mostRoom(mends: readonly Mend[]): Mend | undefined {
  return mends.reduce<Mend | undefined>(
    (best, each) => (best && roomOf(best.margin) >= roomOf(each.margin) ? best : each),
    undefined,
  );
}

function lightReached(bench: Bench, column: string): LightReached | undefined {
  const figure = figuresOf(bench, column).number;
  const [lamps, perLamp, wanted] = [figure('lamps'), figure('lightPerLamp'), figure('lightTarget')];
  if (lamps === undefined || perLamp === undefined || wanted === undefined) return undefined;
  return { reached: lamps * perLamp, wanted };
}
