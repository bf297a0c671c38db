import type { Line } from '#shared-calc/records/records.ts';
import { boxReader, scopeSignature, type BoxReader } from './box-reader.ts';

export interface TakenLines {
  /** Lines whose boxes must be read again in every column. */
  readonly rereads: readonly Line[];
  readonly dropped: readonly string[];
}

export interface LineTable {
  readonly take: (next: readonly Line[]) => TakenLines;
  readonly find: (name: string) => Line | undefined;
  readonly reader: () => BoxReader;
}

/** The lines a bench stands on, and how their boxes are read; a new reader only where names or kinds change. */
export function openLineTable(): LineTable {
  let lines: readonly Line[] = [];
  let byName: ReadonlyMap<string, Line> = new Map();
  let reader = boxReader(lines);
  return {
    take(next) {
      const before = byName;
      if (next === lines) return { rereads: [], dropped: [] };
      lines = next;
      byName = new Map(lines.map((line) => [line.name, line]));
      const dropped = [...before.keys()].filter((name) => !byName.has(name));
      if (scopeSignature(before.values()) === scopeSignature(lines)) {
        return { rereads: lines.filter((line) => before.get(line.name) !== line), dropped };
      }
      reader = boxReader(lines);
      return { rereads: lines, dropped };
    },
    find: (name) => byName.get(name),
    reader: () => reader,
  };
}
