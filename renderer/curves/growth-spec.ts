import { growthCurve, type GrowthPoint } from '#shared-calc/prepare/growth-curve.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import type { CurvePoint, CurveSpec } from './curve-spec.ts';
import { roundTicks } from './round-ticks.ts';

interface Harvest {
  readonly day: number;
  readonly before: number;
  readonly taken: number;
  readonly after: number;
}

const SHOWN = 7;
/** After this many harvests the amount taken hardly changes. */
const SETTLED = 200;

/** Animals in a tub from its start through its first harvests; nothing for kinds whose tubs are used up. */
export function growthSpec(kind: CultureKind, decimalComma: boolean): CurveSpec | undefined {
  const days = kind.firstHarvestDays + (SHOWN - 1) * kind.harvestEveryDays;
  const points = growthCurve(kind, days);
  if (points.length === 0) return undefined;
  const write = (figure: number) => writeNumber(figure, 0, { decimalComma });
  const harvests = harvestsIn(points);
  const settled =
    harvestsIn(growthCurve(kind, kind.firstHarvestDays + SETTLED * kind.harvestEveryDays)).at(-1)?.taken ?? 0;
  const title = `One tub of ${kind.label} settles at ${write(settled)} every ${kind.harvestEveryDays} days`;
  const most = roundTicks(Math.max(...points.map(({ animals }) => animals)) * 1.1).at(-1) ?? 1;
  return {
    title,
    under: `${kind.tubL} L tub with room for ${write(kind.capacity)}, growing ${write100(kind.ratePerDay ?? 0)} % a day; ${write100(kind.harvestShare)} % is taken on day ${kind.firstHarvestDays}, then every ${kind.harvestEveryDays} days`,
    label: `${title}: from ${write(kind.founders)} animals up to ${write(harvests[0]?.before ?? 0)} on day ${kind.firstHarvestDays}`,
    across: { unit: 'days', most: days, ticks: [0, ...harvests.map(({ day }) => day)] },
    up: { unit: 'animals in the tub', most },
    lines: [{ ink: 'ink', pieces: piecesOf(points) }],
    drops: harvests.map(({ day, before, after }) => ({ across: day, from: before, to: after })),
    words: [
      {
        at: [0, kind.founders],
        words: `start: ${write(kind.founders)} split off`,
        ink: 'muted',
        lie: 'right',
        away: 16,
        dot: true,
      },
      ...harvests.map(({ day, before, taken }): NonNullable<CurveSpec['words']>[number] => ({
        at: [day, before],
        words: write(taken),
        ink: 'ink',
        lie: day === days ? 'left' : 'middle',
        strong: true,
      })),
    ],
    table: {
      headings: ['day', 'animals before', 'taken', 'animals after'],
      rows: [
        ['0', '', '', write(kind.founders)],
        ...harvests.map(({ day, before, taken, after }) => [String(day), write(before), write(taken), write(after)]),
      ],
    },
  };
}

/** A harvest day has two points. */
function harvestsIn(points: readonly GrowthPoint[]): readonly Harvest[] {
  return points.flatMap(({ day, animals }, at) => {
    const before = points[at - 1];
    return before?.day === day
      ? [{ day, before: before.animals, taken: before.animals - animals, after: animals }]
      : [];
  });
}

function piecesOf(points: readonly GrowthPoint[]): readonly (readonly CurvePoint[])[] {
  const pieces: CurvePoint[][] = [[]];
  for (const [at, { day, animals }] of points.entries()) {
    if (points[at - 1]?.day === day) pieces.push([]);
    pieces.at(-1)?.push([day, animals]);
  }
  return pieces.filter((piece) => piece.length > 1);
}

function write100(share: number): string {
  return String(Number((share * 100).toPrecision(6)));
}
