import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineAsTyped } from '#shared-calc/quantity/as-typed.ts';
import { showGiven, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { typedSides, tankSides } from './tank-figures.ts';

/** A measurement: metres, and the text that a person typed for it, if one is kept. */
export interface Side {
  readonly value: number;
  readonly typed?: string | undefined;
}

export type SideOf = (use: UseName) => Side | undefined;

/** Measurements that are said together; what is `worked` from others is left out while they are not known. */
interface Part {
  readonly says: (figure: string) => string;
  readonly sides: readonly (Side | undefined)[];
  /** What is not measured while one of them is missing. */
  readonly named?: string;
}

/**
 * The inside size of a tank in one sentence, in the workshop's units: `600 × 450 × 450 mm inside`, `hexagon, side 260,
 * 520 × 450 across, 500 high, in mm`. A measurement that is missing is said to be.
 */
export function sizeWords(shape: Tank['shape'], sideOf: SideOf, display: Display): string {
  const parts = partsOf(shape, sideOf);
  const sides = parts.flatMap((part) => part.sides).filter((side) => side !== undefined);
  if (sides.length === 0) return shape === 'rectangle' ? 'not measured' : `${shape}, not measured`;
  const unit = shownUnit('mm', display);
  const isMixed = sides.some((side) => sideWords(side, display).whole);
  const write = (side: Side) => {
    const { figure, whole } = sideWords(side, display);
    return isMixed && !whole ? `${figure} ${unitWords(unit, '')}` : figure;
  };
  const said = parts.flatMap((part) => sayPart(part, write));
  if (shape === 'rectangle' && said.length === 1) return `${said[0]}${isMixed ? '' : ` ${unit}`} inside`;
  const words = [...(shape === 'rectangle' ? [] : [shape]), ...said].join(', ');
  return isMixed ? words : `${words}, in ${unit === 'in' ? 'inches' : unitWords(unit, '')}`;
}

/** The same for a tank of the book. */
export function tankSizeWords(tank: Tank, display: Display): string {
  const sides = tankSides(tank);
  const typed = typedSides(tank);
  return sizeWords(
    tank.shape,
    (use) => {
      const mm = sides.get(use);
      return mm === undefined ? undefined : { value: toBase(mm, unitOf('mm')), typed: typed.get(use) };
    },
    display,
  );
}

function partsOf(shape: Tank['shape'], sideOf: SideOf): readonly Part[] {
  const [length, depth, height] = [sideOf('insideLength'), sideOf('insideDepth'), sideOf('insideHeight')];
  const high: Part = { says: (figure) => `${figure} high`, sides: [height], named: 'height' };
  switch (shape) {
    case 'rectangle':
      return length && depth && height
        ? [{ says: (figures) => figures, sides: [length, depth, height] }]
        : [
            { says: (figure) => `${figure} long`, sides: [length], named: 'length' },
            { says: (figure) => `${figure} deep`, sides: [depth], named: 'depth' },
            high,
          ];
    case 'bow':
      return [
        { says: (figure) => `${figure} long`, sides: [length], named: 'length' },
        { says: (figure) => `${figure} deep at the sides`, sides: [depth], named: 'depth' },
        { says: (figure) => `bowed out by ${figure}`, sides: [sideOf('frontBow')], named: 'bow' },
        high,
      ];
    case 'corner':
      return [
        { says: (figure) => `${figure} along each wall`, sides: [length], named: 'side' },
        { says: (figure) => `returns ${figure}`, sides: [sideOf('sideReturn')], named: 'return' },
        high,
      ];
    case 'hexagon':
      return [
        { says: (figure) => `side ${figure}`, sides: [length], named: 'side' },
        ...(length ? [{ says: (figures: string) => `${figures} across`, sides: acrossHexagon(length) }] : []),
        high,
      ];
    case 'cylinder':
      return [{ says: (figure) => `${figure} across`, sides: [length], named: 'diameter' }, high];
  }
}

/** Over the corners and over the flats, to the millimetre. */
function acrossHexagon({ value }: Side): readonly Side[] {
  return [2 * value, Math.round(Math.sqrt(3) * value * 1000) / 1000].map((across) => ({ value: across }));
}

function sayPart({ says, sides, named }: Part, write: (side: Side) => string): readonly string[] {
  const known = sides.filter((side) => side !== undefined);
  if (known.length === sides.length) return [says(known.map(write).join(' × '))];
  return named === undefined ? [] : [`${named} not measured`];
}

function sideWords({ value, typed }: Side, display: Display): { readonly figure: string; readonly whole: boolean } {
  const asTyped = typed === undefined ? undefined : lineAsTyped(typed, 'mm', display);
  return asTyped ?? { figure: showGiven(value, 'mm', display), whole: false };
}
