import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Line, Tank } from '#shared-calc/records/records.ts';
import { typedIn } from '#shared-calc/records/typed-figure.ts';

type Side = Exclude<keyof Tank & `${string}Mm`, never>;

const sideOf = {
  insideLength: 'insideLengthMm',
  insideDepth: 'insideDepthMm',
  insideHeight: 'insideHeightMm',
  frontBow: 'frontBowMm',
  sideReturn: 'sideReturnMm',
  damHeight: 'damHeightMm',
  frontVent: 'frontVentMm',
  glass: 'glassMm',
  baseGlass: 'baseGlassMm',
} as const satisfies Partial<Record<UseName, Side>>;

/**
 * A tank's measurements in mm, by the use of the line that takes them; `undefined` for what is not measured. A
 * measurement that a shape does not have is 0; a hexagon, corner or cylinder is as deep as it is long.
 */
export function tankSides(tank: Tank): ReadonlyMap<UseName, number | undefined> {
  const { shape } = tank;
  return new Map<UseName, number | undefined>([
    ...keysOf(sideOf).map((use) => [use, tank[sideOf[use]]] as const),
    ['insideDepth', tank.insideDepthMm ?? (asDeepAsLong.has(shape) ? tank.insideLengthMm : undefined)],
    ['frontBow', tank.frontBowMm ?? (shape === 'bow' ? undefined : 0)],
    ['sideReturn', tank.sideReturnMm ?? (shape === 'corner' ? undefined : 0)],
  ]);
}

/** The texts that a person typed for measurements of a tank, where they are kept. */
export function typedSides(tank: Tank): ReadonlyMap<UseName, string> {
  if (tank.typed === undefined) return noTexts;
  const texts = new Map<UseName, string>();
  for (const use of keysOf(sideOf)) {
    const text = typedIn('tank', tank, sideOf[use], tank[sideOf[use]]);
    if (text !== undefined) texts.set(use, text);
  }
  return texts;
}

const noTexts: ReadonlyMap<UseName, string> = new Map();

/** A tank's measurements as the texts of a recipe's tank lines, by the use of the line; as typed where that is kept. */
export function tankFigures(tank: Tank): ReadonlyMap<UseName, string> {
  const typed = typedSides(tank);
  const texts = new Map<UseName, string>([['tankShape', tank.shape]]);
  for (const [use, mm] of tankSides(tank)) texts.set(use, typed.get(use) ?? (mm === undefined ? '' : `${mm} mm`));
  return texts;
}

const asDeepAsLong: ReadonlySet<string> = new Set(['hexagon', 'corner', 'cylinder']);

/** The field of the tank book in which a line of a tank is measured; none for any other line. */
export function tankFieldOf({ role, use }: Pick<Line, 'role' | 'use'>): Side | undefined {
  return role === 'tank' ? keysOf(sideOf).flatMap((each) => (each === use ? [sideOf[each]] : []))[0] : undefined;
}
