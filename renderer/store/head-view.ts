import { capital } from '#shared-calc/rule/capital.ts';
import type { HeadView } from '#renderer/bench/view-model.ts';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { showValue } from '#shared-calc/quantity/shown-unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { BenchColumn } from './bench-source.ts';
import type { LineFaces } from './line-faces.ts';

/** The card over a strip, from the column's own figures; while it is not worked the tank alone is known. */
export function headView(column: BenchColumn, bench: Bench | undefined, faces: LineFaces, issued: boolean): HeadView {
  const { key, count, tank } = column;
  const kit = faces.of('kit')?.line.options ?? [];
  const chosen = bench && kit.length > 0 ? bench.box(key, 'kit').value : undefined;
  return {
    key,
    label: calledOf(column),
    size: bench ? sizeWords(bench, key, faces) : '',
    kit: typeof chosen === 'string' ? chosen : '',
    kits: kit.map((value) => ({ value, label: `${capital(value)} kit` })),
    count,
    section: bench ? sectionFigures(bench, key, faces) : unknownSection(tank),
    issued,
  };
}

/** `900 × 445 × 600 mm` */
function sizeWords(bench: Bench, column: string, faces: LineFaces): string {
  const parts = ['inside_length', 'inside_depth', 'inside_height'].map((name) => {
    const face = faces.of(name);
    const value = face && bench.box(column, name).value;
    return typeof value === 'number' && face ? showValue(value, face.line.unit, faces.display) : '?';
  });
  const unit = faces.of('inside_length')?.unit ?? 'mm';
  return `${parts.join(' × ')}\u00a0${unit}`;
}

const lengths = {
  overallDepth: 'overall_depth',
  insideHeight: 'inside_height',
  damHeight: 'dam_height',
  glass: 'glass',
  baseGlass: 'base_glass',
  frontBow: 'front_bow',
  sideReturn: 'side_return',
  frontVent: 'front_vent',
  drainage: 'drainage',
  drainGap: 'drain_gap',
  meshThickness: 'mesh_thickness',
  meshUpturn: 'mesh_upturn',
  capping: 'capping',
  beadWidth: 'bead_width',
  beadHeight: 'bead_height',
  soilFront: 'soil_front',
  soilRise: 'soil_rise',
  litter: 'litter',
  coverVent: 'cover_vent',
} as const satisfies Partial<Record<keyof SectionFigures, string>>;

/** What a recipe without a layer of soil has in its place. */
const elsewhere: Readonly<Record<string, string>> = { soil_front: 'damp_depth' };

/** Without these nothing can be drawn; any other line that a recipe does not have is a layer it does without. */
const needed: ReadonlySet<string> = new Set(['overall_depth', 'inside_height', 'dam_height', 'glass', 'base_glass']);

/** The section of a size, in mm and counts. */
export function sectionFigures(bench: Bench, column: string, faces: LineFaces): SectionFigures {
  const valueOf = (name: string) => {
    const known = [name, elsewhere[name] ?? name].find((each) => faces.of(each));
    if (known === undefined) return needed.has(name) ? undefined : 0;
    const { value } = bench.box(column, known);
    return typeof value === 'number' ? value : undefined;
  };
  const shape = faces.of('tank_shape') ? bench.box(column, 'tank_shape').value : undefined;
  const tank = bench.input().columns.find((each) => each.key === column)?.tank;
  const lamps = valueOf('lamps');
  const mm = (name: string) => {
    const value = valueOf(name);
    return value === undefined ? undefined : value * 1000;
  };
  return {
    ...(Object.fromEntries(Object.entries(lengths).map(([field, line]) => [field, mm(line)])) as Record<
      keyof typeof lengths,
      number | undefined
    >),
    shape: shapeOf(shape, tank),
    lamps,
  };
}

function shapeOf(value: unknown, tank: Tank | undefined): Tank['shape'] {
  const shapes: readonly Tank['shape'][] = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'];
  return shapes.find((shape) => shape === value) ?? tank?.shape ?? 'rectangle';
}

function unknownSection({ shape }: Tank): SectionFigures {
  const none = Object.fromEntries(Object.keys(lengths).map((field) => [field, undefined]));
  return { ...(none as Record<keyof typeof lengths, undefined>), shape, lamps: undefined };
}
