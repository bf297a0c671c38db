import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { figureFor } from '#shared-calc/bench/figure-for.ts';
import type { SizeAnimals } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { plantClasses, plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { PlantNeed, PlantPlace } from './choose-plants.ts';

/** What was asked where the tank is to stand. */
export type Asked = Pick<Job, 'survey'>;

/** At or below this humidity, as a share, a tank counts as dry. */
const DRY_SHARE = 0.7;

/** The conditions for plants, from a size's own figures. An unknown figure counts as zero, which suits few plants. */
export function plantPlace(bench: Bench, column: string, { survey }: Asked): PlantPlace {
  const figure = (use: UseName, unit: string) => figureFor(bench, column, use, unit) ?? 0;
  const lines = bench.lines(column);
  const { columns } = bench.input();
  const publicSite = lineFor(lines, 'publicSite');
  return {
    light: figure('lamps', 'each') * figure('lightPerLamp', 'mol/m2/d'),
    heightMm: figure('insideHeight', 'mm') - figure('damHeight', 'mm'),
    lengthMm: figure('overallLength', 'mm'),
    floorM2: figure('floorArea', 'm2'),
    dry: lineFor(lines, 'tankHumidity') !== undefined && figure('tankHumidity', 'share') <= DRY_SHARE + 1e-9,
    avoidHarm:
      mayMeetChildren(survey) || (publicSite !== undefined && bench.box(column, publicSite.name).value === true),
    animalCrushes: mayCrush(columns.find(({ key }) => key === column)?.animals ?? {}),
  };
}

/** A kind of which nobody knows better may crush small plants. */
function mayCrush({ kind, count }: SizeAnimals): boolean {
  return kind !== undefined && count !== 0 && kind.crushesPlants !== false;
}

/** Small children or strangers may come near; what nobody asked counts as yes. */
function mayMeetChildren({ underFives, publicRoom }: Asked['survey']): boolean {
  return underFives !== 'no' || publicRoom !== 'no';
}

/** How many of each class a size needs, for one build. */
export function plantNeeds(bench: Bench, column: string): readonly PlantNeed[] {
  return plantClasses.map((each) => ({
    class: each,
    count: figureFor(bench, column, plantNeedUses[each], 'each') ?? 0,
  }));
}
