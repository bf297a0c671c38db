import type { DrainFigures } from '#shared-calc/papers/size-sheet.ts';
import { drainEvery } from '#shared-calc/prepare/care-calendar.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CurveLine, CurveSpec, CurveWords } from './curve-spec.ts';
import { roundTicks } from './round-ticks.ts';

interface Season {
  readonly name: 'summer' | 'winter';
  readonly ink: 'water' | 'ink';
  /** L per day, and the day on which it is full. */
  readonly gain: number;
  readonly full: number;
}

const NEVER_DAYS = 3650;

/** Water in the drainage until it is full, summer and winter; nothing if it never fills. */
export function drainSpec(figures: DrainFigures, decimalComma: boolean): CurveSpec | undefined {
  const seasons = [seasonOf('summer', figures.summerMl, figures), seasonOf('winter', figures.winterMl, figures)].filter(
    ({ full }) => full < NEVER_DAYS,
  );
  const first = seasons.toSorted((one, other) => one.full - other.full)[0];
  if (!first || figures.roomL <= 0) return undefined;
  const write = (figure: number, decimals: number) => writeNumber(figure, decimals, { decimalComma });
  const every = drainEvery(first.full);
  const most = Math.max(every * 1.5, ...seasons.map(({ full }) => full)) * 1.05;
  const title = `${first.name === 'summer' ? 'Summer' : 'Winter'} fills the drainage first: drain every ${weeksOrDays(every)}`;
  return {
    title,
    under: `${figures.called}, ${write(figures.mistMl, 0)} mL of mist a day less the vapour that leaves`,
    label: `${title}. ${seasons.map((season) => `In ${season.name} ${write(season.gain * 1000, 2)} millilitres a day fill ${write(figures.roomL, 2)} litres in ${write(season.full, 1)} days`).join('; ')}`,
    across: { unit: 'days', most, ticks: weekTicks(most, every) },
    up: { unit: 'litres standing in the drainage', most: roundTicks(figures.roomL * 1.15).at(-1) ?? 1 },
    lines: [
      {
        ink: 'muted',
        thin: true,
        dashed: true,
        pieces: [
          [
            [0, figures.roomL],
            [most, figures.roomL],
          ],
        ],
      },
      ...seasons.flatMap((season) => linesOf(season, every)),
    ],
    drops: [{ across: every, from: first.gain * every, to: 0 }],
    words: wordsOf(seasons, { roomL: figures.roomL, every, write }),
    table: {
      headings: ['season', 'mL a day', 'full on day', 'room, L'],
      rows: seasons.map(({ name, gain, full }) => [
        name,
        write(gain * 1000, 2),
        write(full, 1),
        write(figures.roomL, 2),
      ]),
    },
  };
}

function seasonOf(name: Season['name'], vapourMl: number, { mistMl, roomL }: DrainFigures): Season {
  const gain = (mistMl - vapourMl) / 1000;
  return { name, ink: name === 'summer' ? 'water' : 'ink', gain, full: gain > 0 ? roomL / gain : Infinity };
}

function linesOf({ ink, gain, full }: Season, every: number): readonly CurveLine[] {
  const drained = gain * every;
  return [
    {
      ink,
      pieces: [
        [
          [0, 0],
          [every, drained],
        ],
      ],
    },
    {
      ink,
      dashed: true,
      pieces: [
        [
          [every, drained],
          [full, gain * full],
        ],
      ],
    },
  ];
}

interface DrainTerms {
  readonly roomL: number;
  readonly every: number;
  readonly write: (figure: number, decimals: number) => string;
}

function wordsOf(seasons: readonly Season[], { roomL, every, write }: DrainTerms): readonly CurveWords[] {
  return [
    { at: [0, roomL], words: `room for water ${write(roomL, 2)} L`, ink: 'muted', lie: 'right', away: 16 },
    { at: [every, 0], words: `drain after ${weeksOrDays(every)}`, ink: 'ink', lie: 'left', strong: true },
    ...seasons.flatMap(({ name, ink, gain, full }): readonly CurveWords[] => [
      {
        at: [full, roomL],
        words: `full, day ${write(full, 1)}`,
        ink,
        lie: name === 'summer' ? 'left' : 'middle',
        dot: true,
        away: -10,
      },
      {
        at: [every * 0.5, gain * every * 0.5],
        words: `${name}, ${write(gain * 1000, 2)} mL a day`,
        ink,
        lie: name === 'summer' ? 'left' : 'right',
        away: name === 'summer' ? -6 : 14,
      },
    ]),
  ];
}

function weeksOrDays(days: number): string {
  return days % 7 === 0 && days > 14 ? `${days / 7} weeks` : `${days} ${days === 1 ? 'day' : 'days'}`;
}

/** Every week, or every n-th week so that there are at most a dozen ticks. */
function weekTicks(most: number, every: number): readonly number[] {
  const step = every < 14 ? Math.max(1, Math.ceil(most / 12)) : 7 * Math.ceil(most / 7 / 12);
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, at) => at * step);
}
