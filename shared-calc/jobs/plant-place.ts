import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { plantClasses, type Job } from '#shared-calc/records/records.ts';
import type { PlantNeed, PlantPlace } from './choose-plants.ts';

/** Who sees the tank, as the job tells it. */
export type Audience = Pick<Job, 'audience'>;

/** At or below this humidity a tank is one that dries out. */
const DRY_SHARE = 0.7;

const children =
  /under[\s-]*(fives?|5s?)|nursery|kindergarten|toddler|infant|child|school|class|pupil|all ages|public/i;

/** What a size's own figures say of the place that its plants stand in. A line that the recipe has not counts as 0. */
export function plantPlace(
  bench: Bench,
  column: string,
  { audience, animalCrushes }: Audience & Pick<PlantPlace, 'animalCrushes'>,
): PlantPlace {
  const figure = (name: string, unit: string) => figureOf(bench, { column, name, unit });
  return {
    light: figure('lamps', 'each') * figure('light_per_lamp', 'mol/m2/d'),
    heightMm: figure('inside_height', 'mm') - figure('dam_height', 'mm'),
    lengthMm: figure('overall_length', 'mm'),
    floorM2: figure('floor_area', 'm2'),
    dry: hasLine(bench, 'tank_humidity') && figure('tank_humidity', 'share') <= DRY_SHARE + 1e-9,
    avoidHarm:
      children.test(audience) || (hasLine(bench, 'public_site') && bench.box(column, 'public_site').value === true),
    animalCrushes,
  };
}

/** How many of each class a size needs, for one build: its lines `ground_need`, `mid_need` and so on. */
export function plantNeeds(bench: Bench, column: string): readonly PlantNeed[] {
  return plantClasses.map((each) => ({
    class: each,
    count: figureOf(bench, { column, name: `${each}_need`, unit: 'each' }),
  }));
}

function figureOf(
  bench: Bench,
  { column, name, unit }: { readonly column: string; readonly name: string; readonly unit: string },
): number {
  if (!hasLine(bench, name)) return 0;
  const { value } = bench.box(column, name);
  return typeof value === 'number' ? fromBase(value, unitOf(unit)) : 0;
}

function hasLine(bench: Bench, name: string): boolean {
  return bench.input().lines.some((line) => line.name === name);
}
