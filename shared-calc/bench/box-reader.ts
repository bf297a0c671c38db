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

const byLines = new WeakMap<readonly Line[], BoxReader>();
/** Readers of the last recipes: parsed rules are reused while names and kinds are the same. */
const bySignature = new Map<string, BoxReader>();
const MOST_READERS = 16;

/** The reader of a list of lines; the same one for every list with the same names, units and choices. */
export function readerFor(lines: readonly Line[]): BoxReader {
  const known = byLines.get(lines);
  if (known) return known;
  const signature = scopeSignature(lines);
  const reader = bySignature.get(signature) ?? boxReader(lines);
  byLines.set(lines, reader);
  bySignature.delete(signature);
  bySignature.set(signature, reader);
  const [oldest] = bySignature.keys();
  if (bySignature.size > MOST_READERS && oldest !== undefined) bySignature.delete(oldest);
  return reader;
}

/** Names, units and choices: what rules are checked against. Parsed rules stay valid while it is unchanged. */
function scopeSignature(lines: readonly Line[]): string {
  return lines.map((line) => [line.name, line.unit, ...(line.options ?? [])].join(' ')).join('\n');
}
