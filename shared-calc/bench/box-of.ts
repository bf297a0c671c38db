import type { BoxProblem, BoxValue, Figure } from '#shared-calc/engine/box-content.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { BoxSource } from '#shared-calc/recipe/column.ts';
import type { BoxReading } from '#shared-calc/recipe/read-box.ts';
import { isForTank } from '#shared-calc/recipe/whole-recipe.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { ResolvedText } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { BenchInput } from './bench-input.ts';
import type { Box, BoxCause, BoxCheck, BoxState } from './bench-types.ts';
import type { ColumnBoxes } from './column-boxes.ts';
import { stateOfAnswer } from './check-state.ts';
import { isFixed } from './probes.ts';
import type { ColumnRanges } from './ranges.ts';

interface Parts {
  readonly line: Line;
  readonly boxes: ColumnBoxes;
  readonly worked: BoxValue;
  /** Worked when first asked: a list of needs asks for none. */
  readonly ranges: () => ColumnRanges;
  readonly input: Pick<BenchInput, 'lines' | 'isOldPrice'>;
}

const fromNowhere: ResolvedText = { text: '', source: 'house' };

/** One cell with its value, state, flags and cause. */
export function boxOf(parts: Parts): Box {
  const { line, boxes, worked, ranges, input } = parts;
  const reading = boxes.readings.get(line.name) ?? { is: 'missing' as const };
  const resolved = boxes.sources.get(line.name) ?? fromNowhere;
  const { text, source } = resolved;
  const common = {
    line,
    column: boxes.input.key,
    source,
    text,
    ...(isTyped(resolved) && { typed: true as const }),
    ...(reading.is === 'rule' && { rule: reading.rule }),
    ...(line.role === 'check' && { check: checkOf(parts) }),
  };
  if (!worked.known) {
    const cause = causeOf(reading, boxes.cycles.get(line.name), worked.problem);
    return { ...common, value: undefined, flags: [], state: stateOf(cause), cause };
  }
  const flags = flagsOf(line, [worked.value, ...endsOf(reading)], (material) =>
    input.isOldPrice(material === 'TANK' ? boxes.input.tank.id : material),
  );
  const state = givenState(source, line);
  const range = isFixed(line) ? undefined : ranges().ranges.get(line.name);
  return { ...common, value: worked.value, state, flags, ...(range !== undefined && { range }) };
}

function givenState(source: BoxSource, line: Line): BoxState {
  if (source === 'house' && isForTank(line)) return 'always for this tank';
  return source === 'tank' ? 'house' : source;
}

/** What is written over for a size or a job is as it was typed. */
function isTyped({ source, typed }: ResolvedText): boolean {
  return typed === true || source === 'local' || source === 'job';
}

function checkOf({ line, worked, ranges, input }: Parts): BoxCheck {
  const saidBy = line.unlessRanged && lineFor(input.lines, line.unlessRanged);
  if (saidBy && ranges().ranges.has(saidBy.name)) return { state: 'not asked', badIn: [] };
  const badIn = ranges().badIn.get(line.name) ?? [];
  const holds = worked.known && typeof worked.value === 'boolean' ? worked.value : undefined;
  return { state: badIn.length > 0 ? 'may not hold' : stateOfAnswer(holds), badIn };
}

function endsOf(reading: BoxReading): readonly Figure[] {
  return reading.is === 'figure' && reading.range ? [reading.range.least, reading.range.most] : [];
}

/** The first of the values is the cell's own; the others are the ends of its range. */
function flagsOf(line: Line, values: readonly Figure[], isOldPrice: BenchInput['isOldPrice']): Box['flags'] {
  const flags: Box['flags'][number][] = [];
  const [value = 0] = values;
  if (values.some((each) => isOutOfRange(line, each))) flags.push('out of range');
  if (line.material !== undefined && isNeeded(value) && isOldPrice(line.material)) flags.push('old price');
  return flags;
}

function causeOf(reading: BoxReading, cycle: readonly string[] | undefined, problem: BoxProblem): BoxCause {
  if (cycle) return { why: 'loop', cycle };
  if (reading.is === 'missing') return { why: 'missing' };
  return reading.is === 'faulty' ? { why: 'faulty', fault: reading.fault } : { why: 'waits', problem };
}

function stateOf(cause: BoxCause): BoxState {
  if (cause.why === 'loop') return 'loop';
  return cause.why === 'waits' ? 'waiting' : 'needs a figure';
}

function isNeeded(value: Figure): boolean {
  return typeof value === 'number' && value > 0;
}

/** Outside its bounds, which are in the line's own unit. */
function isOutOfRange(line: Line, value: Figure): boolean {
  if (typeof value !== 'number' || (line.low === undefined && line.high === undefined)) return false;
  const unit = unitOf(line.unit);
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  const below = line.low !== undefined && value < toBase(line.low, unit) - slack;
  return below || (line.high !== undefined && value > toBase(line.high, unit) + slack);
}
