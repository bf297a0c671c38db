import { dimension, isPlain, sameDimension } from '#shared-calc/quantity/dimension.ts';
import { figureKind, type FigureKind, type Kind } from '#shared-calc/quantity/kind.ts';

/** A difference of two temperatures. */
export const STEP: FigureKind = figureKind(dimension({ temperature: 1 }));

export function isReading(kind: Kind): boolean {
  return kind.is === 'figure' && kind.sort === 'reading';
}

/** Figures that may be compared or replace one another: the same dimension, and not a temperature for a step. */
export function sameFigure(left: FigureKind, right: FigureKind): boolean {
  return sameDimension(left.dimension, right.dimension) && isReading(left) === isReading(right);
}

/** Two of one sort keep it; a count with a share, or either with a number, is a number. */
export function mixSorts(left: FigureKind, right: FigureKind): FigureKind {
  return left.sort === right.sort ? left : figureKind(left.dimension);
}

/** The common kind of two branches or two limits; `undefined` if there is none. */
export function commonKind(left: Kind, right: Kind): Kind | undefined {
  if (left.is === 'figure' && right.is === 'figure') return sameFigure(left, right) ? mixSorts(left, right) : undefined;
  if (left.is === 'choice' && right.is === 'choice') return commonChoice(left.options, right.options);
  return left.is === right.is ? left : undefined;
}

/** Whether a `given` figure is allowed where `wanted` is expected; counts, shares and numbers mix. */
export function kindFits(wanted: Kind, given: Kind): boolean {
  if (wanted.is === 'figure') return given.is === 'figure' && sameFigure(wanted, given);
  if (wanted.is === 'yes_no') return given.is === 'yes_no';
  return given.is === 'choice' && mayShareWord(wanted.options, given.options);
}

export function isPlainFigure(kind: Kind): boolean {
  return kind.is === 'figure' && isPlain(kind.dimension) && kind.sort !== 'reading';
}

function commonChoice(left: readonly string[] | undefined, right: readonly string[] | undefined): Kind {
  return left && right ? { is: 'choice', options: [...new Set([...left, ...right])] } : { is: 'choice' };
}

/** Words of a choice become known late; only two known lists without a common word are refused. */
function mayShareWord(wanted: readonly string[] | undefined, given: readonly string[] | undefined): boolean {
  return !wanted || !given || given.some((word) => wanted.includes(word));
}
