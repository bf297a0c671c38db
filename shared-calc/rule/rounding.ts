import { isSameFigure } from './same-figure.ts';

/** Binary noise that is taken off before a figure is rounded: 121.00000000000001 is 121. */
const NOISE = 1e-9;

/** Beyond this every double is whole. */
const ALL_WHOLE = 2 ** 52;

export type WholeWay = (size: number) => number;

/** Ways to make a size (never below zero) whole. Half goes up, so away from zero once the sign is back. */
export const nearestWhole: WholeWay = (size) => Math.floor(size + 0.5 + NOISE);
export const wholeAbove: WholeWay = (size) => Math.ceil(size - NOISE);
export const wholeBelow: WholeWay = (size) => Math.floor(size + NOISE);

/** Rounds to so many decimals, or to tens and hundreds where `digits` is below zero; the sign is kept out of it. */
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

/** Down to the whole number below, toward minus infinity. */
export function wholeDown(figure: number): number {
  return (figure < 0 ? -wholeAbove(-figure) : wholeBelow(figure)) + 0;
}

/** To the nearest multiple of a step above zero, half away from zero. */
export function toStep(figure: number, step: number): number {
  const steps = Math.abs(figure) / step;
  return steps >= ALL_WHOLE ? figure : signed(figure, nearestWhole(steps) * step);
}

/** Up or down to a multiple of a step of the same sign; `fromZero` rounds by magnitude, without the sign. */
export function toMultiple(figure: number, step: number, goes: 'up' | 'down', fromZero: boolean): number {
  const steps = figure / step;
  if (steps >= ALL_WHOLE) return figure;
  const grows = figure > 0 || fromZero ? goes === 'up' : goes === 'down';
  return (grows ? wholeAbove(steps) : wholeBelow(steps)) * step + 0;
}

/** figure - by x floor(figure / by); nothing is left where the steps come out whole but for noise. */
export function remainder(figure: number, by: number): number {
  const steps = figure / by;
  if (isSameFigure(steps, Math.round(steps))) return 0;
  return figure - by * Math.floor(steps);
}

function signed(like: number, size: number): number {
  return (like < 0 ? -size : size) + 0;
}
