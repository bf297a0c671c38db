import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import { sectionOf } from '#renderer/drawing/section-of.ts';
import type { QuoteSize } from '#shared-calc/papers/quote-sizes.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { tankShapes } from '#shared-calc/fields/tank.ts';

/** The section of a size from the figures that a quote was issued with. */
export function frozenSection({ shape, figures, lines, inches }: QuoteSize): SectionFigures {
  const tank = tankShapes.find((each) => each === shape) ?? 'rectangle';
  const section = sectionOf(lines, tank, ({ name, unit }) => {
    const value = figures[name];
    return typeof value === 'number' ? toBase(value, unitOf(unit)) : value;
  });
  return { ...section, inches };
}
