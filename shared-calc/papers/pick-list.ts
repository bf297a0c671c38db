import { calledOf } from '#shared-calc/recipe/column.ts';
import { linePlaces } from '#shared-calc/fields/uses.ts';
import { needPlace } from '#shared-calc/recipe/lines-by-use.ts';
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
}

/** Groups that are not packed: the hours, the van. */
const notPacked: readonly string[] = ['work', 'delivery'];

/** A pick list for every size of a bench. */
export function pickLists(bench: Bench, records: Pick<Records, 'material'>, display: Display): readonly PickList[] {
  const { lines, columns } = bench.input();
  const needs = lines.filter((line) => line.role === 'need' && !notPacked.includes(line.group ?? ''));
  const inOrder = inOrderOfUse(needs);
  return columns.map(({ key, label, tank, count }) => ({
    size: key,
    called: calledOf({ key, label }),
    tank: tank.label,
    builds: count,
    rows: inOrder.flatMap((line) => {
      const { value } = bench.box(key, line.name);
      if (value === 0) return [];
      const material = records.material.get(line.material ?? '');
      const amount = value === undefined ? 'needs a figure' : showWithUnit(value, line.unit, display);
      return [
        { section: line.section, line: line.name, ...named(line, material, tank.label), amount, ...whence(material) },
      ];
    }),
  }));
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
