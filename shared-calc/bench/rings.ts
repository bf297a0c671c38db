import type { BoxReading } from '#shared-calc/recipe/read-box.ts';
import { findLoops } from '#shared-calc/rule/find-loops.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';

/** Every line that stands in a ring, with the ring as told from it. */
export type Rings = ReadonlyMap<string, readonly string[]>;

/** The rings of one size, found before the engine is touched. */
export function ringsOf(readings: ReadonlyMap<string, BoxReading>): Rings {
  const reads = new Map<string, readonly string[]>();
  for (const [name, reading] of readings) if (reading.is === 'rule') reads.set(name, linesRead(reading));
  const rings = new Map<string, readonly string[]>();
  for (const ring of findLoops(reads)) for (const name of ring) rings.set(name, turnTo(ring, name));
  return rings;
}

/** Whether a line reads the same other lines by either reading: then no ring comes or goes by it. */
export function readsAlike(one: BoxReading, other: BoxReading): boolean {
  const [left, right] = [linesRead(one), linesRead(other)];
  return left.length === right.length && left.every((name, at) => name === right[at]);
}

const noLines: readonly string[] = [];

function linesRead(reading: BoxReading): readonly string[] {
  return reading.is === 'rule' ? namesIn(reading.rule) : noLines;
}

/** Lines that came into a ring or out of one. */
export function ringChanges(before: Rings, after: Rings): readonly string[] {
  return [...new Set([...before.keys(), ...after.keys()])].filter((name) => before.has(name) !== after.has(name));
}

function turnTo(ring: readonly string[], first: string): readonly string[] {
  const at = ring.indexOf(first);
  return [...ring.slice(at), ...ring.slice(0, at)];
}
