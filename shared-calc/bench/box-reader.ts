import { readBox, type BoxReading } from '#shared-calc/recipe/read-box.ts';
import { scopeOf, type Scope } from '#shared-calc/recipe/scope.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Reads cells against the lines of one recipe; the same text of a line is parsed once. */
export interface BoxReader {
  readonly scope: Scope;
  read(line: Line, text: string): BoxReading;
}

export function boxReader(lines: readonly Line[]): BoxReader {
  const scope = scopeOf(lines);
  const known = new Map<string, BoxReading>();
  const read = (line: Line, text: string): BoxReading => {
    const key = `${line.name}\n${text}`;
    const ready = known.get(key) ?? readBox(text, line, scope);
    known.set(key, ready);
    return ready;
  };
  return { scope, read };
}

/** Names, units and choices: what rules are checked against. Parsed rules stay valid while it is unchanged. */
export function scopeSignature(lines: Iterable<Line>): string {
  return [...lines].map((line) => [line.name, line.unit, ...(line.options ?? [])].join(' ')).join('\n');
}
