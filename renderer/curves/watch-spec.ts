import { degreesOf } from './degrees.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { WatchBand } from '#shared-calc/prepare/watch.ts';
import type { WatchReading } from '#shared-calc/prepare/watch-log.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CurveSpec } from './curve-spec.ts';

interface Watched {
  readonly title: string;
  readonly unit: string;
  readonly of: (reading: WatchReading) => number;
  readonly low: number;
  readonly high: number;
}

/** Commissioning readings as two pictures against the band: temperature and humidity. */
export function watchSpecs(readings: readonly WatchReading[], band: WatchBand, display: Display): readonly CurveSpec[] {
  const degrees = degreesOf(display);
  const both: readonly Watched[] = [
    {
      title: 'Temperature',
      unit: degrees.unit,
      of: ({ degC }) => degrees.of(degC),
      low: degrees.of(band.lowestC),
      high: degrees.of(band.highestC),
    },
    { title: 'Humidity', unit: '%', of: ({ humidity }) => humidity, low: band.driest, high: band.dampest },
  ];
  return both.map((watched) => specOf(watched, readings, display));
}

function specOf(
  { title, unit, of, low, high }: Watched,
  readings: readonly WatchReading[],
  display: Display,
): CurveSpec {
  const write = (figure: number) => writeNumber(figure, 1, display);
  const figures = readings.map(of);
  const hours = readings.at(-1)?.hour ?? 1;
  const [least, most] = [Math.min(...figures), Math.max(...figures)];
  return {
    title: `${title} from ${write(least)} to ${write(most)} ${unit}`,
    under: `over ${write(hours)} hours, against a band of ${write(low)} to ${write(high)} ${unit}`,
    label: `${title} from ${write(least)} to ${write(most)} over ${write(hours)} hours; the band is ${write(low)} to ${write(high)}`,
    across: { unit: 'hours', most: hours },
    up: { unit, most: Math.max(most, high) * 1.05 },
    lines: [
      limit(low, hours),
      limit(high, hours),
      { ink: 'ink', pieces: [readings.map((reading) => [reading.hour, of(reading)])] },
    ],
    words: [
      { at: [hours, low], words: `least ${write(low)} ${unit}`, ink: 'muted', lie: 'left', away: 16 },
      { at: [hours, high], words: `most ${write(high)} ${unit}`, ink: 'muted', lie: 'left' },
    ],
    table: {
      headings: ['hour', unit, 'in the band'],
      rows: readings.map((reading) => [
        write(reading.hour),
        write(of(reading)),
        of(reading) >= low && of(reading) <= high ? 'yes' : 'no',
      ]),
    },
  };
}

function limit(up: number, hours: number): CurveSpec['lines'][number] {
  return {
    ink: 'muted',
    thin: true,
    dashed: true,
    pieces: [
      [
        [0, up],
        [hours, up],
      ],
    ],
  };
}
