import { isSameFigure } from './same-figure.ts';

/** Binary noise that is removed before a figure is rounded: 121.00000000000001 is 121. */
const NOISE = 1e-9;

/** From this size on every double is whole. */
const ALL_WHOLE = 2 ** 52;

export type WholeWay = (size: number) => number;

/** Ways to make a size (never below zero) whole. Half goes up, which is away from zero once the sign is restored. */
export const nearestWhole: WholeWay = (size) => Math.floor(size + 0.5 + NOISE);
export const wholeAbove: WholeWay = (size) => Math.ceil(size - NOISE);
export const wholeBelow: WholeWay = (size) => Math.floor(size + NOISE);

/**
 * Rounds to this many decimals, or to tens and hundreds if `digits` is below zero; works on the size without the sign.
 */
export function roundDigits(figure: number, digits: number, way: WholeWay): number {
  const places = Math.trunc(digits);
  const scale = 10 ** Math.abs(places);
  const size = Math.abs(figure);
  const scaled = places >= 0 ? size * scale : size / scale;
  if (scale === Number.POSITIVE_INFINITY) return places > 0 ? figure : 0;
  if (scaled >= ALL_WHOLE) return figure;
  const whole = way(scaled);
  return signed(figure, places >= 0 ? whole / scale : whole * scale);
}

/** Rounds down to a whole number, toward minus infinity. */
export function wholeDown(figure: number): number {
  return (figure < 0 ? -wholeAbove(-figure) : wholeBelow(figure)) + 0;
}

/** Rounds to the nearest multiple of a step above zero, half away from zero. */
export function toStep(figure: number, step: number): number {
  const steps = Math.abs(figure) / step;
  return steps >= ALL_WHOLE ? figure : signed(figure, nearestWhole(steps) * step);
}

/** Rounds up or down to a multiple of a step of the same sign; `fromZero` rounds the size, without the sign. */
export function toMultiple(figure: number, step: number, goes: 'up' | 'down', fromZero: boolean): number {
  const steps = figure / step;
  if (steps >= ALL_WHOLE) return figure;
  const grows = figure > 0 || fromZero ? goes === 'up' : goes === 'down';
  return (grows ? wholeAbove(steps) : wholeBelow(steps)) * step + 0;
}

/** figure - by x floor(figure / by); 0 if the quotient is whole except for binary noise. */
export function remainder(figure: number, by: number): number {
  const steps = figure / by;
  if (isSameFigure(steps, Math.round(steps))) return 0;
  return figure - by * Math.floor(steps);
}

function signed(like: number, size: number): number {
  return (like < 0 ? -size : size) + 0;
}
