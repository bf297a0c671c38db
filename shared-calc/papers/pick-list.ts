import { calledOf } from '#shared-calc/recipe/column.ts';
import { linePlaces } from '#shared-calc/fields/uses.ts';
import { needPlace } from '#shared-calc/recipe/lines-by-use.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import type { ChosenPlants } from '#shared-calc/jobs/choose-plants.ts';
import { plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Line, Material, Records } from '#shared-calc/records/records.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';

/** What must be ready on build day for one size, in the order of use, to tick off. */
export interface PickList {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly builds: number;
  readonly rows: readonly PickRow[];
}

export interface PickRow {
  readonly section: string;
  readonly line: string;
  readonly label: string;
  readonly material: string;
  /** For one build, with its unit; *needs a figure* if there is none. */
  readonly amount: string;
  readonly from: 'Store' | 'Glass cutter' | 'Back room';
  readonly brings: 'Builder' | 'Grower';
  /** Of a plant: its own price, and the price of its class; decimal texts, empty while not known. */
  readonly price?: { readonly own: string; readonly class: string };
}

/** Plants by name, as chosen for a size. */
export interface PickPlants {
  readonly of: (column: string) => readonly ChosenPlants[];
  readonly prices: PriceBook;
  readonly money: (coins: number) => string;
}

/** Groups that are not packed: the hours, the van. */
const notPacked: readonly string[] = ['work', 'delivery'];

/** A pick list for every size of a bench; with plants by name where they are given. */
export function pickLists(
  bench: Bench,
  records: Pick<Records, 'material'>,
  display: Display,
  plants?: PickPlants,
): readonly PickList[] {
  return bench.input().columns.map(({ key, label, tank, count }) => {
    const isPacked = (line: Line) => line.role === 'need' && !notPacked.includes(line.group ?? '');
    const inOrder = inOrderOfUse(bench.lines(key).filter(isPacked));
    const chosen = plants?.of(key) ?? [];
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      builds: count,
      rows: inOrder.flatMap((line) => {
        const { value } = bench.box(key, line.name);
        if (value === 0) return [];
        const material = records.material.get(line.material ?? '');
        const amount = value === undefined ? 'needs a figure' : showWithUnit(value, line.unit, display);
        const row = { section: line.section, line: line.name, ...named(line, material, tank.label), amount };
        const all = { ...row, ...whence(material) };
        const species = chosen.find((each) => plantNeedUses[each.class] === line.use);
        return plants && species ? byName(all, { line, species, plants, display }) : [all];
      }),
    };
  });
}

interface NamedPlants {
  readonly line: Line;
  readonly species: ChosenPlants;
  readonly plants: PickPlants;
  readonly display: Display;
}

/** A row for each species; plants that no species fits stay a row of their class. */
function byName(row: PickRow, { line, species, plants, display }: NamedPlants): readonly PickRow[] {
  const { goods } = plants.prices;
  const money = (coins: number | undefined) => (coins === undefined ? '' : plants.money(coins));
  const ofClass = money(goods.get(line.material ?? '')?.packs[0]?.priceCoins);
  const rows = species.chosen.map(({ plant, count }) => ({
    ...row,
    material: plant.name,
    amount: showWithUnit(count, line.unit, display),
    price: { own: money(plant.priceCoins), class: ofClass },
  }));
  return species.short > 0 ? [...rows, { ...row, amount: showWithUnit(species.short, line.unit, display) }] : rows;
}

/**
 * Section by section, in the build order of most of its needs; a section without a place comes last, in recipe order.
 */
function inOrderOfUse(needs: readonly Line[]): readonly Line[] {
  const sections = [...Map.groupBy(needs, ({ section }) => section).values()];
  return sections.toSorted((one, other) => rankOf(one) - rankOf(other)).flat();
}

function rankOf(needs: readonly Line[]): number {
  const place = needPlace(needs, { section: needs[0]?.section ?? '' });
  return place === undefined ? linePlaces.length : linePlaces.indexOf(place);
}

function named(line: Line, material: Material | undefined, tank: string): Pick<PickRow, 'label' | 'material'> {
  return {
    label: lineLabel(line),
    material: line.material === 'TANK' ? tank : (material?.label ?? line.material ?? ''),
  };
}

function whence(material: Material | undefined): Pick<PickRow, 'from' | 'brings'> {
  if (material?.sale === 'own') return { from: 'Back room', brings: 'Grower' };
  return { from: material?.sale === 'cut' ? 'Glass cutter' : 'Store', brings: 'Builder' };
}
