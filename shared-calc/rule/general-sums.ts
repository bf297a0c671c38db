import {
  nearestWhole,
  remainder,
  roundDigits,
  toMultiple,
  toStep,
  wholeAbove,
  wholeBelow,
  wholeDown,
  type WholeWay,
} from './rounding.ts';
import { isSameFigure } from './same-figure.ts';

export type Scalar = number | string | boolean;
export type SumAnswer = number | boolean | { readonly refused: string };
export type GeneralSum = (given: readonly Scalar[]) => SumAnswer;

/**
 * The sums of the general functions and the six comparisons, over base units; in the engine they are LW_ROUND,
 * LW_AT_MOST and so on. `if`, `and`, `or`, `not`, `pick` and `pi` are not sums and are handled elsewhere.
 */
export const generalSums: ReadonlyMap<string, GeneralSum> = new Map<string, GeneralSum>([
  ['same', ([left, right]) => same(left, right)],
  ['differs', ([left, right]) => !same(left, right)],
  ['less', overFigures((left, right) => left < right && !isSameFigure(left, right))],
  ['at_most', overFigures((left, right) => left <= right || isSameFigure(left, right))],
  ['more', overFigures((left, right) => left > right && !isSameFigure(left, right))],
  ['at_least', overFigures((left, right) => left >= right || isSameFigure(left, right))],
  ['abs', overFigures(Math.abs)],
  ['min', overFigures((...figures) => Math.min(...figures))],
  ['max', overFigures((...figures) => Math.max(...figures))],
  ['sum', overFigures((...figures) => figures.reduce((total, figure) => total + figure, 0))],
  ['round', rounded(nearestWhole)],
  ['roundup', rounded(wholeAbove)],
  ['rounddown', rounded(wholeBelow)],
  ['ceiling', multiple('up')],
  ['floor', multiple('down')],
  ['int', overFigures(wholeDown)],
  ['mod', overFigures(rest)],
  ['sqrt', overFigures(root)],
  ['exp', overFigures(Math.exp)],
  ['ln', overFigures(logarithm)],
  ['power', overFigures(power)],
  ['clamp', overFigures(clamp)],
  ['round_to', overFigures(stepped)],
]);

/** A sum over figures alone; checking has counted the arguments, so the named ones exist. */
type OverFigures = (...figures: number[]) => SumAnswer;

function overFigures(sum: OverFigures): GeneralSum {
  return (given) => {
    if (!given.every((each) => typeof each === 'number'))
      return refused('This works with figures only, not with words.');
    return sum(...given);
  };
}

/** Text is compared exactly, case included. */
function same(left: Scalar | undefined, right: Scalar | undefined): boolean {
  return typeof left === 'number' && typeof right === 'number' ? isSameFigure(left, right) : left === right;
}

function rounded(way: WholeWay): GeneralSum {
  return overFigures((figure: number, digits?: number) => roundDigits(figure, digits ?? 0, way));
}

/** OpenFormula CEILING and FLOOR: the step has the figure's sign, 1 by default; 0 gives 0. */
function multiple(goes: 'up' | 'down'): GeneralSum {
  return overFigures((figure: number, step?: number, mode?: number) => {
    const by = step ?? (figure < 0 ? -1 : 1);
    if (figure === 0 || by === 0) return 0;
    if (figure < 0 !== by < 0) return refused('The step must have the sign of the figure.');
    return toMultiple(figure, by, goes, (mode ?? 0) !== 0);
  });
}

function rest(figure: number, by: number): SumAnswer {
  return by === 0 ? refused('Nothing is left over by steps of 0.') : remainder(figure, by);
}

function root(figure: number): SumAnswer {
  return figure < 0 ? refused('Nothing below zero has a square root.') : Math.sqrt(figure);
}

function logarithm(figure: number): SumAnswer {
  return figure <= 0 ? refused('Only figures above zero have a logarithm.') : Math.log(figure);
}

function stepped(figure: number, step: number): SumAnswer {
  return step <= 0 ? refused('The step must be above zero.') : toStep(figure, step);
}

function power(base: number, to: number): SumAnswer {
  if (base === 0 && to < 0) return refused('Zero has no power below zero.');
  if (base < 0 && !Number.isInteger(to)) return refused('A figure below zero takes whole powers only.');
  return base ** to;
}

function clamp(figure: number, low: number, high: number): SumAnswer {
  if (low > high && !isSameFigure(low, high)) return refused('The low limit is above the high one.');
  return Math.min(Math.max(figure, low), high);
}

function refused(says: string): { readonly refused: string } {
  return { refused: says };
}
