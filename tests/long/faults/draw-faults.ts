import { globSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { faultKinds, findFaults, type Fault } from './find-faults.ts';

export interface FaultInFile extends Fault {
  readonly file: string;
}

/** The faults of a layer in the order they are tried: kinds in rotation, and for each kind one file after another. */
export function drawFaults(root: string, layer: string, seed: number): FaultInFile[] {
  const files = globSync(`${layer}/**/*.{ts,tsx}`, { cwd: root })
    .filter((each) => !/\/dist\/|vite\.config/u.test(each))
    .toSorted();
  const all = files.flatMap((file) =>
    findFaults(file, readFileSync(path.join(root, file), 'utf8')).map((fault) => ({ ...fault, file })),
  );
  const shuffled = shuffle(all, chance(seed));
  const heaps = faultKinds.map((kind) => shuffled.filter((each) => each.kind === kind));
  const longest = Math.max(...heaps.map(({ length }) => length));
  const inTurn = Array.from({ length: longest }, (_, index) => heaps.flatMap((heap) => heap[index] ?? [])).flat();
  return oneOfEachFileFirst(inTurn);
}

function oneOfEachFileFirst(faults: readonly FaultInFile[]): FaultInFile[] {
  const seen = new Set<string>();
  const first = faults.filter(({ file }) => seen.size < seen.add(file).size);
  return [...first, ...faults.filter((each) => !first.includes(each))];
}

function shuffle<T>(list: readonly T[], next: () => number): T[] {
  return list
    .map((each) => ({ each, at: next() }))
    .toSorted((one, other) => one.at - other.at)
    .map(({ each }) => each);
}

/** Numbers from 0 to 1, the same ones for the same seed (mulberry32). */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
