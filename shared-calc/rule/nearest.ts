/**
 * The known name nearest to a mistyped one, by letters inserted, left out, changed or swapped with their neighbour;
 * case is ignored. `undefined` if more than a third would have to change.
 */
export function nearestName(name: string, names: Iterable<string>): string | undefined {
  const sought = name.toLowerCase();
  let least = Math.min(Math.max(1, Math.floor(sought.length / 3)), sought.length - 1) + 1;
  let nearest: string | undefined;
  for (const known of names) {
    if (Math.abs(known.length - sought.length) >= least) continue;
    const steps = editSteps(sought, known.toLowerCase());
    if (steps >= least) continue;
    least = steps;
    nearest = known;
  }
  return nearest;
}

function editSteps(from: string, to: string): number {
  let older: readonly number[] = [];
  let old: readonly number[] = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let row = 1; row <= from.length; row += 1) {
    const next = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const change = (old[column - 1] ?? 0) + (from[row - 1] === to[column - 1] ? 0 : 1);
      const steps = Math.min((old[column] ?? 0) + 1, (next[column - 1] ?? 0) + 1, change);
      next.push(isSwap(from, to, row, column) ? Math.min(steps, (older[column - 2] ?? 0) + 1) : steps);
    }
    older = old;
    old = next;
  }
  return old[to.length] ?? 0;
}

function isSwap(from: string, to: string, row: number, column: number): boolean {
  return row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
}
