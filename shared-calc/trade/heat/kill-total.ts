import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { killRateAt, STEP_ABOVE_ZERO } from './kill-rate.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { listFunction, refused, type Answer } from '#shared-calc/trade/trade-function.ts';

/** Minutes from the start, and degC of the core at that time. */
export type CoreReading = readonly [minute: number, degC: number];

/** The temperature at which minutes are counted (degC), and the step that divides them by ten (K). */
export interface KillScale {
  readonly reference: number;
  readonly step: number;
  /** Colder than this counts for nothing, degC. */
  readonly leastC?: number;
}

/**
 * Minutes at the reference that equal a log of the core; on straight lines between readings, worked out exactly, not
 * rounded.
 */
export function killTotal(readings: readonly CoreReading[], scale: KillScale): Answer {
  const grown = killOverTime(readings, scale);
  return 'refused' in grown ? grown : (grown.at(-1) ?? 0);
}

/** The running total: minutes at the reference up to each reading; the first is 0. */
export function killOverTime(readings: readonly CoreReading[], scale: KillScale): readonly number[] | Refusal {
  if (scale.step <= 0) return refused(STEP_ABOVE_ZERO);
  if (readings.length < 2) return refused('A log needs two readings or more.');
  const grown = [0];
  for (const [at, from] of readings.slice(0, -1).entries()) {
    const to = readings[at + 1] ?? from;
    if (!(to[0] > from[0])) return refused(timesMustRise(from, to));
    grown.push((grown[at] ?? 0) + legKill(from, to, scale));
  }
  return grown;
}

/** d x (b - a) / ln(b / a), in a form that loses no digits on a nearly level leg. */
function legKill(first: CoreReading, last: CoreReading, { reference, step, leastC = -Infinity }: KillScale): number {
  const [[fromMinute, from], [toMinute, to]] = [warmEnd(first, last, leastC), warmEnd(last, first, leastC)];
  if (from < leastC) return 0;
  const grows = ((to - from) / step) * Math.LN10;
  const mean = Math.abs(grows) < 1e-12 ? 1 : Math.expm1(grows) / grows;
  return (toMinute - fromMinute) * killRateAt(from, reference, step) * mean;
}

/** This end of a leg, moved along it to where it is warm enough; unmoved where no part of the leg is. */
function warmEnd([minute, degC]: CoreReading, [otherMinute, other]: CoreReading, leastC: number): CoreReading {
  if (degC >= leastC || other < leastC) return [minute, degC];
  return [minute + ((otherMinute - minute) * (leastC - degC)) / (other - degC), leastC];
}

function timesMustRise(from: CoreReading, to: CoreReading): string {
  return `Times must rise: ${sayPlain(to[0])} min comes after ${sayPlain(from[0])} min.`;
}

export const killTotalEntry = listFunction({
  name: 'KILL_TOTAL',
  title: 'Kill of a core log',
  group: 'heat',
  takes: 'readings of minutes and degC, the reference temperature, the ten-fold step z',
  gives: 'min',
  sum: 'each leg: minutes x (end rate - start rate) / ln(end rate / start rate), or minutes x rate where it is level',
  help: 'Adds up what a core log is worth in minutes at the reference. The temperature runs straight between readings; averaging the rates instead would overstate the kill.',
  examples: [
    {
      rule: 'KILL_TOTAL((0, 60) (5, 70) (10, 80) (15, 82) (35, 82) (45, 60), 82, 10)',
      gives: '27.32 min',
    },
    { rule: 'KILL_TOTAL((0, 121) (15, 121), 121, 10)', gives: '15 min' },
  ],
  source: 'definition of F; integrated exactly',
  cautions: ['coreProbe', 'cleanIsEnough', 'neverPromise'],
});
