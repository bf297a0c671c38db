import type { Line } from '#shared-calc/records/records.ts';
import type { BenchInput } from './bench-input.ts';
import { boxReader, scopeSignature, type BoxReader } from './box-reader.ts';

export interface TakenLines {
  /** Lines whose boxes must be read again in every column. */
  readonly rereads: readonly Line[];
  readonly dropped: readonly string[];
}

export interface LineTable {
  readonly take: (next: Pick<BenchInput, 'lines' | 'decimalComma'>) => TakenLines;
  readonly find: (name: string) => Line | undefined;
  readonly reader: () => BoxReader;
}

/** The lines a bench stands on, and how their boxes are read; a new reader only where names or kinds change. */
export function openLineTable(): LineTable {
  let lines: readonly Line[] = [];
  let comma = false;
  let byName: ReadonlyMap<string, Line> = new Map();
  let reader = boxReader(lines, comma);
  return {
    take(next) {
      const before = byName;
      const sameSign = next.decimalComma === comma;
      if (next.lines === lines && sameSign) return { rereads: [], dropped: [] };
      lines = next.lines;
      comma = next.decimalComma;
      byName = new Map(lines.map((line) => [line.name, line]));
      const dropped = [...before.keys()].filter((name) => !byName.has(name));
      if (sameSign && scopeSignature(before.values()) === scopeSignature(lines)) {
        return { rereads: lines.filter((line) => before.get(line.name) !== line), dropped };
      }
      reader = boxReader(lines, comma);
      return { rereads: lines, dropped };
    },
    find: (name) => byName.get(name),
    reader: () => reader,
  };
}
