import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench, LiveBench } from '#shared-calc/bench/open-bench.ts';

type OpenBench = (start: BenchInput) => LiveBench;

let graphBench: OpenBench | undefined;

/** Loads the incremental bench. Its engine is half of the page's code and is not needed to show figures. */
export async function loadGraphBench(): Promise<OpenBench> {
  graphBench ??= (await import('#shared-calc/bench/open-bench.ts')).openBench;
  return graphBench;
}

/** The graph bench if it is loaded; until then, a bench that computes each size as a whole. */
export function openLoadedBench(start: BenchInput): { readonly bench: LiveBench; readonly isGraph: boolean } {
  return graphBench ? { bench: graphBench(start), isGraph: true } : { bench: wholeSizes(start), isGraph: false };
}

/** Sizes computed in one slice of an update. */
const SLICE = 4;

/** A size is computed again only if its texts or lines changed. */
function wholeSizes(start: BenchInput): LiveBench {
  let bench: Bench = onceBench(start);
  const work = (columns: BenchInput['columns']) => {
    for (const { key } of columns) for (const { name } of bench.lines(key).slice(0, 1)) bench.box(key, name);
  };
  return {
    input: () => bench.input(),
    lines: (column) => bench.lines(column),
    scope: (column) => bench.scope(column),
    ranges: (column) => bench.ranges(column),
    box: (column, line) => bench.box(column, line),
    update: (next, first) => {
      bench = onceBench(next);
      const later = next.columns.filter(({ key }) => first !== undefined && !first.includes(key));
      work(next.columns.filter((column) => !later.includes(column)));
      return () => {
        work(later.splice(0, SLICE));
        return later.length > 0;
      };
    },
    close: () => undefined,
  };
}
