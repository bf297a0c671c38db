import type { Line } from '#shared-calc/records/records.ts';

/** Columns whose last changes are not worked yet, each with the names of the lines to read again for it. */
export interface RecalcQueue {
  readonly has: (column: string) => boolean;
  /** These columns wait from now on, and those that wait already go on, for these lines too. */
  readonly add: (columns: readonly { readonly key: string }[], lines: readonly Line[]) => void;
  /** Its turn has come: what it waited for; `undefined` where it did not. */
  readonly take: (column: string) => ReadonlySet<string> | undefined;
}

export function openRecalcQueue(): RecalcQueue {
  const waiting = new Map<string, ReadonlySet<string>>();
  return {
    has: (column) => waiting.has(column),
    add: (columns, lines) => {
      const names = lines.map((line) => line.name);
      for (const column of new Set([...waiting.keys(), ...columns.map(({ key }) => key)])) {
        waiting.set(column, new Set([...(waiting.get(column) ?? []), ...names]));
      }
    },
    take: (column) => {
      const names = waiting.get(column);
      waiting.delete(column);
      return names;
    },
  };
}
