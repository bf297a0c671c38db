import type { BoxContent } from '#shared-calc/engine/box-content.ts';
import type { BoxWrite } from '#shared-calc/engine/open-grid.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { BoxReading, Ends } from '#shared-calc/recipe/read-box.ts';
import { textResolver, type ResolvedText } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { readerFor } from './box-reader.ts';
import { namedLines } from './column-lines.ts';
import type { ProbedColumn } from './probes.ts';
import { readsAlike, cycleChanges, cyclesOf, type Cycles } from './cycles.ts';

/** The parsed cells of one size, reused between updates. */
export interface ColumnBoxes {
  readonly input: ColumnInput;
  readonly job: ReadonlyMap<string, string>;
  readonly lines: readonly Line[];
  readonly readings: Map<string, BoxReading>;
  readonly sources: Map<string, ResolvedText>;
  readonly cycles: Cycles;
}

interface Refresh {
  readonly column: ColumnInput;
  readonly job: ReadonlyMap<string, string>;
  /** The lines of the size. */
  readonly lines: readonly Line[];
}

interface Refreshed {
  readonly boxes: ColumnBoxes;
  /** What the engine must write. */
  readonly writes: readonly BoxWrite[];
  /** Names of lines that the size no longer has. */
  readonly dropped: readonly string[];
}

/** Brings one size up to date. */
export function refreshColumn(before: ColumnBoxes | undefined, refresh: Refresh): Refreshed {
  const { column, job, lines } = refresh;
  const { readings, sources, cycles: oldCycles } = before ?? noBoxes();
  const { rereads, dropped } = lineChanges(before?.lines ?? lines, lines);
  for (const name of dropped) for (const each of [readings, sources]) each.delete(name);
  const { changed, rewired } = readAgain({ readings, sources }, refresh, linesToRead(before, refresh, rereads));
  const cycles = rewired || dropped.length > 0 ? cyclesOf(readings) : oldCycles;
  for (const name of cycleChanges(oldCycles, cycles)) if (readings.has(name)) changed.add(name);
  const writes = [...changed].map((line) => ({ column: column.key, line, content: contentOf(line, readings, cycles) }));
  return { boxes: { input: column, job, lines, readings, sources, cycles }, writes, dropped };
}

interface LineChanges {
  /** Lines whose cells must be read again, if nothing else of a size changed. */
  readonly rereads: readonly Line[];
  readonly dropped: readonly string[];
}

const noChanges: LineChanges = { rereads: [], dropped: [] };
/** By the list before, then by the list after: many sizes take the same step. */
const changesKnown = new WeakMap<readonly Line[], WeakMap<readonly Line[], LineChanges>>();

function lineChanges(before: readonly Line[], after: readonly Line[]): LineChanges {
  if (before === after) return noChanges;
  const known = changesKnown.get(before) ?? new WeakMap<readonly Line[], LineChanges>();
  changesKnown.set(before, known);
  const changes = known.get(after) ?? findChanges(before, after);
  known.set(after, changes);
  return changes;
}

/** Where names or kinds changed, every rule is read again. */
function findChanges(before: readonly Line[], after: readonly Line[]): LineChanges {
  const [old, now] = [namedLines(before), namedLines(after)];
  const isSameScope = readerFor(before) === readerFor(after);
  return {
    rereads: isSameScope ? after.filter((line) => old.get(line.name) !== line) : after,
    dropped: [...old.keys()].filter((name) => !now.has(name)),
  };
}

function noBoxes(): Pick<ColumnBoxes, 'readings' | 'sources' | 'cycles'> {
  return { readings: new Map(), sources: new Map(), cycles: new Map() };
}

interface ReadAgain {
  /** Names of lines whose reading changed. */
  readonly changed: Set<string>;
  /** Some of them now read other lines. */
  readonly rewired: boolean;
}

/** Reads lines again into a column's maps. */
function readAgain(
  { readings, sources }: Pick<ColumnBoxes, 'readings' | 'sources'>,
  { column, job, lines: all }: Refresh,
  lines: readonly Line[],
): ReadAgain {
  const reader = readerFor(all);
  const resolve = textResolver(column, job);
  const changed = new Set<string>();
  let rewired = false;
  for (const line of lines) {
    const resolved = resolve(line);
    const reading = reader.read(line, resolved.text);
    const before = readings.get(line.name);
    sources.set(line.name, resolved);
    if (before === reading) continue;
    readings.set(line.name, reading);
    changed.add(line.name);
    rewired ||= before === undefined || !readsAlike(before, reading);
  }
  return { changed, rewired };
}

/** Another tank is read in full; otherwise only lines that changed, or whose written-over text changed. */
function linesToRead(
  before: ColumnBoxes | undefined,
  { column, job, lines }: Refresh,
  rereads: readonly Line[],
): readonly Line[] {
  if (before?.input.tank !== column.tank) return lines;
  const names = new Set([
    ...differing(before.job, job),
    ...differing(before.input.locals, column.locals),
    ...differing(before.input.given ?? nothingGiven, column.given ?? nothingGiven),
  ]);
  return names.size === 0 ? rereads : [...rereads, ...lines.filter((line) => names.has(line.name))];
}

const nothingGiven: NonNullable<ColumnInput['given']> = new Map();

function differing<T>(before: ReadonlyMap<string, T>, after: ReadonlyMap<string, T>): readonly string[] {
  if (before === after) return [];
  return [...new Set([...before.keys(), ...after.keys()])].filter((name) => before.get(name) !== after.get(name));
}

/** The cells of a size as the engine works them out. */
export function contentsOf({ readings, cycles }: ColumnBoxes): ProbedColumn['contents'] {
  return new Map([...readings.keys()].map((name) => [name, contentOf(name, readings, cycles)]));
}

function contentOf(
  name: string,
  readings: ReadonlyMap<string, BoxReading>,
  cycles: Cycles,
): BoxContent & { readonly range?: Ends } {
  if (cycles.has(name)) return { is: 'nothing', why: 'loop' };
  const reading = readings.get(name);
  if (!reading || reading.is === 'missing') return { is: 'nothing', why: 'missing' };
  return reading.is === 'faulty' ? { is: 'nothing', why: 'faulty' } : reading;
}
