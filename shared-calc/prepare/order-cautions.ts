import { cautionsOf, figuresOfTank } from './act-cautions.ts';
import { boxCautions } from './box-cautions.ts';
import { sizeFigures } from './size-figures.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { storeActs } from '#shared-calc/cautions/acts.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { linePlaces } from '#shared-calc/fields/uses.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { needPlace } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** What to mind at these lines of every size, with its figures; each wording once. */
export function benchCautions(bench: Bench, lines: readonly Line[], display: Display): readonly SaidCaution[] {
  const { columns } = bench.input();
  return eachOnce(
    columns.flatMap((column) => {
      const tank = columns.length === 1 ? undefined : calledOf(column);
      const fill = figuresOfTank(sizeFigures(bench, column.key, display), tank);
      return lines.flatMap((line) => boxCautions(bench.box(column.key, line.name), fill));
    }),
  );
}

/** What to mind when the goods of an order come in, or some of its materials; what no size needs is left out. */
export function needsCautions(bench: Bench, materials?: readonly string[]): readonly SaidCaution[] {
  const { lines, columns } = bench.input();
  const isNeeded = ({ name }: Line) => columns.some(({ key }) => bench.box(key, name).value !== 0);
  const isAsked = ({ material = '' }: Line) => materials === undefined || materials.includes(material);
  const needs = lines.filter((line) => line.role === 'need' && isAsked(line) && isNeeded(line));
  return placesCautions(needs.map((line) => [line, lines]));
}

/** What to mind when these materials come in, wherever the house's recipes put them. */
export function goodsCautions(lines: Iterable<Line>, materials: ReadonlySet<string>): readonly SaidCaution[] {
  const byRecipe = [...Map.groupBy(lines, ({ recipe }) => recipe).values()];
  return placesCautions(
    byRecipe.flatMap((own) =>
      own
        .filter(({ role, material = '' }) => role === 'need' && materials.has(material))
        .map((line) => [line, own] as const),
    ),
  );
}

/** In the order of a build. */
function placesCautions(needs: readonly (readonly [need: Line, of: readonly Line[]])[]): readonly SaidCaution[] {
  const places = new Set(needs.map(([need, lines]) => needPlace(lines, need)));
  return eachOnce(linePlaces.filter((place) => places.has(place)).flatMap((place) => cautionsOf(storeActs[place])));
}
