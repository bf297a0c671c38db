import type { BoxReading } from '#shared-calc/recipe/read-box.ts';
import { findLoops } from '#shared-calc/rule/find-loops.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';

/** Lines in a circular reference, each with its cycle rotated to start at that line. */
export type Cycles = ReadonlyMap<string, readonly string[]>;

/** The cycles of one size, found before the engine is written to. */
export function cyclesOf(readings: ReadonlyMap<string, BoxReading>): Cycles {
  const reads = new Map<string, readonly string[]>();
  for (const [name, reading] of readings) if (reading.is === 'rule') reads.set(name, linesRead(reading));
  const cycles = new Map<string, readonly string[]>();
  for (const cycle of findLoops(reads)) for (const name of cycle) cycles.set(name, turnTo(cycle, name));
  return cycles;
}

/** True if a line reads the same lines in both readings, so that the cycles cannot change. */
export function readsAlike(one: BoxReading, other: BoxReading): boolean {
  const [left, right] = [linesRead(one), linesRead(other)];
  return left.length === right.length && left.every((name, at) => name === right[at]);
}

const noLines: readonly string[] = [];

function linesRead(reading: BoxReading): readonly string[] {
  return reading.is === 'rule' ? namesIn(reading.rule) : noLines;
}

/** Lines that joined or left a cycle. */
export function cycleChanges(before: Cycles, after: Cycles): readonly string[] {
  return [...new Set([...before.keys(), ...after.keys()])].filter((name) => before.has(name) !== after.has(name));
}

function turnTo(cycle: readonly string[], first: string): readonly string[] {
  const at = cycle.indexOf(first);
  return [...cycle.slice(at), ...cycle.slice(0, at)];
}
