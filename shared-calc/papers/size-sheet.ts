import { missingFigures, type MissingFigure } from '#shared-calc/bench/waits.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { DerivedJob } from '#shared-calc/derive/derived.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { cautionEntry, cautionIds } from '#shared-calc/cautions/all-cautions.ts';
import type { MassPart } from '#shared-calc/prepare/heaviest-parts.ts';
import { checkSheet, type CheckSheet, type SheetTerms } from '#shared-calc/prepare/mends.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';

/** What fills the drainage of a size, for each day. */
export interface DrainFigures {
  readonly called: string;
  readonly roomL: number;
  readonly mistMl: number;
  readonly winterMl: number;
  readonly summerMl: number;
}

export interface SizeSheet extends Omit<CheckSheet, 'parts'> {
  readonly size: string;
  /** The limits of the place. */
  readonly place: readonly PlaceCheck[];
  readonly called: string;
  /** Figures without which checks cannot be worked. */
  readonly missing: readonly MissingFigure[];
  readonly sizes: readonly { readonly key: string; readonly called: string; readonly label: string }[];
  readonly parts: readonly (MassPart & { readonly label: string })[];
  /** Notes that belong to figures of this recipe. */
  readonly beside: readonly {
    readonly labels: readonly string[];
    readonly misleads: string;
    readonly says: string;
    readonly decides: string;
  }[];
  readonly drain: DrainFigures | undefined;
}

/** The sheet of checks of one size of a job, by default the first; nothing for a job without sizes. */
export function sizeSheet(
  { place, bench, keys, pricing }: DerivedJob,
  { size: asked, display }: { readonly size: string | undefined; readonly display: Display },
): SizeSheet | undefined {
  const size = keys.find((key) => key === asked) ?? keys[0];
  return size === undefined ? undefined : sheetOn(bench, size, { place, terms: { display, pricing } });
}

interface SheetOf {
  readonly place: (size: string) => readonly PlaceCheck[];
  readonly terms: SheetTerms;
}

/** The sheet of one size of an open bench. */
export function sheetOn(bench: Bench, size: string, { place, terms }: SheetOf): SizeSheet {
  const sheet = checkSheet(bench, size, terms);
  const lines = bench.lines(size);
  const { columns } = bench.input();
  const sizes = columns.map((column) => ({ key: column.key, called: calledOf(column), label: column.tank.label }));
  const called = sizes.find(({ key }) => key === size)?.called ?? size;
  const labelOf = (name: string) => lines.filter((line) => line.name === name).map(lineLabel);
  const labelFor = (use: UseName) => [lineFor(lines, use)].flatMap((line) => (line ? [lineLabel(line)] : []));
  return {
    ...sheet,
    size,
    called,
    missing: missingFigures(bench, size),
    place: place(size),
    sizes,
    parts: sheet.parts.map((part) => ({ ...part, label: labelOf(part.line)[0] ?? part.line })),
    beside: cautionIds
      .map(cautionEntry)
      .flatMap(({ uses = [], misleads, says, decides }) =>
        misleads === undefined ? [] : [{ labels: uses.flatMap(labelFor), misleads, says, decides }],
      )
      .filter(({ labels }) => labels.length > 0),
    drain: drainOf(bench, { size, called }, terms.display),
  };
}

interface Drained {
  readonly size: string;
  readonly called: string;
}

function drainOf(bench: Bench, { size, called }: Drained, display: SheetTerms['display']): DrainFigures | undefined {
  const { number } = sizeFigures(bench, size, display);
  const [roomL, mistMl] = [number('drainRoom', 'L'), number('mist', 'mL/d')];
  const [winterMl, summerMl] = [number('vapourWinter', 'mL/d'), number('vapourSummer', 'mL/d')];
  if (roomL === undefined || mistMl === undefined || winterMl === undefined || summerMl === undefined) return undefined;
  return { called, roomL, mistMl, winterMl, summerMl };
}
