import { inchFraction } from '#shared-calc/quantity/inch-fraction.ts';
import type { SectionFigures } from './section-figures.ts';

/** A depth beside a drawing: whole mm as the bench shows them, an exact half kept; inches as read off a rule. */
export function depthWords(mm: number, { inches }: Pick<SectionFigures, 'inches'>): string {
  const read = inches ? inchFraction(mm / 25.4) : undefined;
  return (read ?? String(Math.round(mm * 10) / 10)).replace('-', '\u2212');
}
