type ReadsOf = ReadonlyMap<string, readonly string[]>;

/**
 * Cycles of lines that read one another, each in reading order: a, b, c where a reads b, b reads c and c reads a. A
 * cycle starts at the one of its lines that is first in the map. Every line that reads itself, directly or not, is in
 * at least one cycle; names that the map does not have are ignored.
 */
export function findLoops(readsOf: ReadsOf): readonly (readonly string[])[] {
  const placeOf = new Map([...readsOf.keys()].map((name, at) => [name, at]));
  const knotOf = findKnots(readsOf);
  const listed = new Set<string>();
  const cycles: (readonly string[])[] = [];
  for (const name of readsOf.keys()) {
    const cycle = listed.has(name) ? undefined : cycleThrough(name, readsOf, knotOf);
    if (!cycle) continue;
    for (const member of cycle) listed.add(member);
    cycles.push(fromFirst(cycle, placeOf));
  }
  return cycles;
}

/** The shortest cycle through a line, searched only inside its strongly connected component. */
function cycleThrough(
  start: string,
  readsOf: ReadsOf,
  knotOf: ReadonlyMap<string, number>,
): readonly string[] | undefined {
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (const name of queue) {
    for (const next of readsOf.get(name) ?? []) {
      if (next === start) return pathTo(name, start, cameFrom);
      if (knotOf.get(next) !== knotOf.get(start) || cameFrom.has(next)) continue;
      cameFrom.set(next, name);
      queue.push(next);
    }
  }
  return undefined;
}

function pathTo(end: string, start: string, cameFrom: ReadonlyMap<string, string>): readonly string[] {
  const path = [end];
  for (let name = end; name !== start;) {
    name = cameFrom.get(name) ?? start;
    path.push(name);
  }
  return path.toReversed();
}

function fromFirst(cycle: readonly string[], placeOf: ReadonlyMap<string, number>): readonly string[] {
  let first = 0;
  for (const [at, name] of cycle.entries()) {
    if ((placeOf.get(name) ?? 0) < (placeOf.get(cycle[first] ?? '') ?? 0)) first = at;
  }
  return [...cycle.slice(first), ...cycle.slice(0, first)];
}

interface Visit {
  readonly name: string;
  readonly reads: readonly string[];
  next: number;
}

/**
 * Tarjan's strongly connected components, each with its own number; lines that read one another share one. Uses its own
 * stack, not the call stack, so a chain may have any length.
 */
function findKnots(readsOf: ReadsOf): ReadonlyMap<string, number> {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const knotOf = new Map<string, number>();
  const open: string[] = [];
  const visits: Visit[] = [];

  const enter = (name: string): void => {
    index.set(name, index.size);
    low.set(name, index.size - 1);
    open.push(name);
    visits.push({ name, reads: readsOf.get(name) ?? [], next: 0 });
  };
  const lower = (name: string, to: number): void => {
    low.set(name, Math.min(low.get(name) ?? to, to));
  };
  const follow = (visit: Visit, read: string): void => {
    if (!readsOf.has(read)) return;
    if (!index.has(read)) enter(read);
    else if (!knotOf.has(read)) lower(visit.name, index.get(read) ?? 0);
  };
  const leave = (name: string): void => {
    visits.pop();
    const parent = visits.at(-1);
    if (parent) lower(parent.name, low.get(name) ?? 0);
    if (low.get(name) !== index.get(name)) return;
    for (const member of open.splice(open.lastIndexOf(name))) knotOf.set(member, index.get(name) ?? 0);
  };

  for (const name of readsOf.keys()) {
    if (!index.has(name)) enter(name);
    for (let visit = visits.at(-1); visit; visit = visits.at(-1)) {
      const read = visit.reads[visit.next];
      visit.next += 1;
      if (read === undefined) leave(visit.name);
      else follow(visit, read);
    }
  }
  return knotOf;
}
