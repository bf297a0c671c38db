import type { SectionGeometry } from './section-shapes.ts';

/** The drawing in words, for readers: `side on: drainage 40, water 30, ... millimetres, 3 lamps`. */
export function saySection(geometry: SectionGeometry): string {
  const layers = geometry.labels.map((label) => `${label.word} ${label.figure}`).join(', ');
  const count = geometry.lamps.length;
  const lamps = count === 0 ? 'no lamps' : count === 1 ? '1 lamp' : `${count} lamps`;
  return layers === '' ? `side on: no layers known yet, ${lamps}` : `side on: ${layers} millimetres, ${lamps}`;
}
