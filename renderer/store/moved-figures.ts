import type { Box } from '#shared-calc/bench/bench-types.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { MovedFacts, WrittenBox } from '#shared-calc/words/say-moved.ts';
import { wholeGross, type BoxBefore, type ColumnBefore } from './column-before.ts';
import type { LineFaces } from './line-faces.ts';
import type { WorkedBench } from './worked-bench.ts';

/** What the last edit of the bench moved: cells by column, and the facts of the line that says it. */
export interface MovedFigures {
  readonly cells: ReadonlyMap<string, ReadonlySet<string>>;
  readonly facts: MovedFacts;
}

interface MovedColumn {
  readonly written: readonly WrittenBox[];
  readonly moved: ReadonlySet<string>;
  readonly opened: MovedFacts['opened'];
  readonly closed: number;
}

/** Compares the sizes of the last edit with what they came to before it; `undefined` if none reads another way. */
export function movedFigures(
  worked: WorkedBench,
  before: ReadonlyMap<string, ColumnBefore>,
  facesIn: (column: string) => LineFaces,
): MovedFigures | undefined {
  const columns = worked.source().columns.filter(({ key }) => before.has(key) && worked.isWorked(key));
  const each = columns.flatMap((column) => {
    const was = before.get(column.key);
    return was ? [{ column, was, now: movedColumn(worked.bench(), column, was, facesIn(column.key)) }] : [];
  });
  const cells = new Map(each.map(({ column, now }) => [column.key, now.moved]));
  const written = each.flatMap(({ now }) => now.written);
  const count = each.reduce((sum, { now }) => sum + now.moved.size, 0);
  if (written.length === 0 && count === 0) return undefined;
  const [only] = each.length === 1 ? each : [];
  const gross = only && wholeGross(worked.sums(only.column.key));
  return {
    cells,
    facts: {
      written,
      moved: count,
      sizes: each.filter(({ now }) => now.moved.size > 0 || now.written.length > 0).length,
      ...(only?.was.gross !== undefined && gross !== undefined && { price: { from: only.was.gross, to: gross } }),
      opened: each.flatMap(({ now }) => now.opened),
      closed: each.reduce((sum, { now }) => sum + now.closed, 0),
    },
  };
}

type Column = Parameters<typeof calledOf>[0] & { readonly key: string };

function movedColumn(bench: Bench, column: Column, { boxes }: ColumnBefore, faces: LineFaces): MovedColumn {
  const { key } = column;
  const all = bench.lines(key).flatMap(({ name }): readonly Compared[] => {
    const was = boxes.get(name);
    return was ? [{ was, now: bench.box(key, name) }] : [];
  });
  const written = all.filter(({ was, now }) => was.text !== now.text);
  const moved = all.filter(({ was, now }) => was.text === now.text && was.value !== now.value && !now.check);
  const opened = all.filter(({ was, now }) => gravity(now.check?.state) > gravity(was.check));
  const names = new Set(opened.map(({ now }) => now.line.name));
  return {
    written: written.map(({ now: { line, value } }) => ({
      label: faces.of(line.name)?.label ?? line.name,
      size: calledOf(column),
      figure: value === undefined ? '' : figureWords(value, line.unit, faces.display),
    })),
    moved: new Set(moved.map(({ now }) => now.line.name)),
    opened: names.size === 0 ? [] : checksOf(bench, key, faces.display).filter(({ line }) => names.has(line.name)),
    closed: all.filter(({ was, now }) => gravity(was.check) > 0 && now.check?.state === 'holds').length,
  };
}

interface Compared {
  readonly was: BoxBefore;
  readonly now: Box;
}

/** A check that may not hold is graver than one that holds, and less grave than one that fails. */
function gravity(state: BoxBefore['check']): number {
  if (state === 'fails') return 2;
  return state === 'may not hold' ? 1 : 0;
}
