import { namedLines } from '#shared-calc/bench/column-lines.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import { cautionsOf, figuresOfTank } from './act-cautions.ts';
import { boxCautions } from './box-cautions.ts';
import { sizeFigures } from './size-figures.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { boughtIn, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { siteActs, storeActs } from '#shared-calc/cautions/acts.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { linePlaces } from '#shared-calc/fields/uses.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { needPlace } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';

/** What to mind at these lines of every size, with its figures; each wording once. */
export function benchCautions(bench: Bench, lines: readonly Line[], display: Display): readonly SaidCaution[] {
  const { columns } = bench.input();
  return eachOnce(
    columns.flatMap((column) => {
      const tank = columns.length === 1 ? undefined : calledOf(column);
      const fill = figuresOfTank(sizeFigures(bench, column.key, display), tank);
      const own = namedLines(bench.lines(column.key));
      return lines.flatMap(({ name }) => (own.has(name) ? boxCautions(bench.box(column.key, name), fill) : []));
    }),
  );
}

/** What to mind when the goods of an order come in, or some of its materials; what no size needs is left out. */
export function needsCautions(bench: Bench, materials?: readonly string[]): readonly SaidCaution[] {
  const needs = bench.input().columns.flatMap(({ key, tank }) => {
    const lines = bench.lines(key);
    const isNeeded = ({ role, name, material = '' }: Line) => {
      const goods = material === 'TANK' ? tank.id : material;
      return role === 'need' && (materials?.includes(goods) ?? true) && bench.box(key, name).value !== 0;
    };
    return lines.filter(isNeeded).map((line) => [line, lines] as const);
  });
  return placesCautions([...new Map(needs)]);
}

/** What to mind when a run over these orders is fetched and its goods come in; nothing where all is in the Store. */
export function runCautions(benches: readonly Bench[], run: Pick<ShoppingRun, 'materials'>): readonly SaidCaution[] {
  const bought = boughtIn(run);
  if (bought.length === 0) return [];
  return eachOnce([...cautionsOf(siteActs.fetching), ...benches.flatMap((bench) => needsCautions(bench, bought))]);
}

/** What to mind when these materials and tanks come in, wherever the house's recipes put them. */
export function goodsCautions(
  records: RecipeTables & Pick<Records, 'tank'>,
  goods: ReadonlySet<string>,
): readonly SaidCaution[] {
  const byRecipe = [...records.recipe.keys()].map((recipe) => linesOf(records, recipe));
  const materials = [...goods].some((each) => records.tank.has(each)) ? new Set([...goods, 'TANK']) : goods;
  return placesCautions(
    byRecipe.flatMap((own) =>
      own
        .filter(({ role, material = '' }) => role === 'need' && materials.has(material))
        .map((need) => [need, own] as const),
    ),
  );
}

/** In the order of a build. */
function placesCautions(needs: readonly (readonly [need: Line, of: readonly Line[]])[]): readonly SaidCaution[] {
  const places = new Set(needs.map(([need, lines]) => needPlace(lines, need)));
  return eachOnce(linePlaces.filter((place) => places.has(place)).flatMap((place) => cautionsOf(storeActs[place])));
}
