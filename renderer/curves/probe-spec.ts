import { sayUnits } from '#shared-calc/words/say-units.ts';
import { sayAllFigures } from '#shared-calc/quantity/said-figures.ts';
import { degreesOf } from './degrees.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { coreHeat, type CoreHeat, type LoggedTreatment } from '#shared-calc/prepare/probe-log.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CoreReading } from '#shared-calc/trade/heat/kill-total.ts';
import type { CurvePoint, CurveSpec } from './curve-spec.ts';
import { roundTicks } from './round-ticks.ts';

/** A core probe's log as two charts: the core temperature, and the counted minutes as they add up. */
export function probeSpecs(
  readings: readonly CoreReading[],
  treatment: LoggedTreatment,
  { heat, display }: { readonly heat: CoreHeat; readonly display: Display },
): readonly CurveSpec[] {
  const write = (figure: number, decimals = 1) => writeNumber(figure, decimals, display);
  const degrees = degreesOf(display);
  const grown = readings.map(([minute], at): CurvePoint => [minute, reachedBy(readings.slice(0, at + 1), treatment)]);
  const last = readings.at(-1)?.[0] ?? 1;
  const across = { unit: 'minutes', most: last };
  const least = degrees.of(heat.leastC);
  const hottest = degrees.of(heat.hottest);
  const table = {
    headings: ['minute', `core ${degrees.unit}`, 'minutes that count'],
    rows: readings.map(([minute, degC], at) => [write(minute), write(degrees.of(degC)), write(grown[at]?.[1] ?? 0)]),
  };
  const under = sayUnits(sayAllFigures(heat.against, display));
  return [
    {
      title: `The core was ${write(hottest)} ${degrees.unit} at its hottest`,
      under,
      label: `Core temperature over ${write(last)} minutes, ${write(hottest)} degrees at its hottest`,
      across,
      up: { unit: degrees.unit, most: Math.max(hottest, least) * 1.05 },
      lines: [
        { ink: 'ink', pieces: [readings.map(([minute, degC]): CurvePoint => [minute, degrees.of(degC)])] },
        limit(least, last),
      ],
      words: [{ at: [0, least], words: `${write(least, 0)} ${degrees.unit}`, ink: 'muted', lie: 'right' }],
      table,
    },
    {
      title: `${write(floorTenth(heat.reached))} of ${write(heat.wanted, 0)} minutes reached`,
      under: heat.enough ? 'The core was there long enough' : 'Not long enough: treat this batch again',
      label: `Minutes that count, grown to ${write(floorTenth(heat.reached))} of ${write(heat.wanted, 0)} wanted`,
      across,
      up: { unit: 'minutes that count', most: roundTicks(Math.max(heat.reached, heat.wanted) * 1.1).at(-1) ?? 1 },
      lines: [{ ink: 'ink', filled: true, pieces: [grown] }, limit(heat.wanted, last)],
      words: [{ at: [0, heat.wanted], words: `wanted: ${write(heat.wanted, 0)} min`, ink: 'muted', lie: 'right' }],
      table,
    },
  ];
}

function limit(up: number, last: number): CurveSpec['lines'][number] {
  return {
    ink: 'muted',
    thin: true,
    dashed: true,
    pieces: [
      [
        [0, up],
        [last, up],
      ],
    ],
  };
}

function reachedBy(readings: readonly CoreReading[], treatment: LoggedTreatment): number {
  const heat = readings.length < 2 ? undefined : coreHeat(readings, treatment);
  return heat?.ok ? heat.value.reached : 0;
}

/** A figure below the threshold is never rounded up to it. */
function floorTenth(figure: number): number {
  return Math.floor(figure * 10 + 1e-9) / 10;
}
