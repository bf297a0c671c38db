import type { BoxContent } from '#shared-calc/engine/box-content.ts';
import type { BoxWrite } from '#shared-calc/engine/open-grid.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { BoxReading, Ends } from '#shared-calc/recipe/read-box.ts';
import { textResolver, type ResolvedText } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { BoxReader } from './box-reader.ts';
import type { ProbedColumn } from './probes.ts';
import { readsAlike, cycleChanges, cyclesOf, type Cycles } from './cycles.ts';

/** The parsed cells of one size, reused between updates. */
export interface ColumnBoxes {
  readonly input: ColumnInput;
  readonly job: ReadonlyMap<string, string>;
  readonly readings: Map<string, BoxReading>;
  readonly sources: Map<string, ResolvedText>;
  readonly cycles: Cycles;
}

interface Refresh {
  readonly column: ColumnInput;
  readonly job: ReadonlyMap<string, string>;
  readonly lines: readonly Line[];
  /** Lines to read again if nothing else of the column changed. */
  readonly rereads: readonly Line[];
  readonly reader: BoxReader;
}

/** Brings one size up to date; returns its cells and what the engine must write. */
export function refreshColumn(
  before: ColumnBoxes | undefined,
  refresh: Refresh,
): { readonly boxes: ColumnBoxes; readonly writes: readonly BoxWrite[] } {
  const { column, job } = refresh;
  const { readings, sources, cycles: oldCycles } = before ?? noBoxes();
  const { changed, rewired } = readAgain({ readings, sources }, refresh, linesToRead(before, refresh));
  const cycles = rewired ? cyclesOf(readings) : oldCycles;
  for (const name of cycleChanges(oldCycles, cycles)) changed.add(name);
  const writes = [...changed].map((line) => ({ column: column.key, line, content: contentOf(line, readings, cycles) }));
  return { boxes: { input: column, job, readings, sources, cycles }, writes };
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
  { column, job, reader }: Refresh,
  lines: readonly Line[],
): ReadAgain {
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
function linesToRead(before: ColumnBoxes | undefined, { column, job, lines, rereads }: Refresh): readonly Line[] {
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
