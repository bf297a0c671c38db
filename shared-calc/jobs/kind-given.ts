import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Sourced } from '#shared-calc/fields/source.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { GivenText, SizeAnimals } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { AnimalKind, Line } from '#shared-calc/records/records.ts';

/**
 * The texts that a kind of animal gives to the lines of a recipe, by name. What is not known of the kind gives none; a
 * tank of plants only has no animals to mind.
 */
export function kindGiven({ kind, count }: SizeAnimals, lines: readonly Line[]): ReadonlyMap<string, GivenText> {
  const given = new Map<string, GivenText>();
  if (!kind || count === 0) return given;
  for (const [use, key, text] of textsOf(kind, lines)) {
    const line = text === undefined ? undefined : lineFor(lines, use);
    const source = sourceOf(kind, key);
    if (line && text !== undefined) given.set(line.name, { text, from: 'kind', ...(source && { source }) });
  }
  return given;
}

/** A figure without a mark of its own has that of its kind. */
function sourceOf({ marks, source, sourceNote }: AnimalKind, key: keyof AnimalKind): Sourced | undefined {
  const own = marks?.[key] ?? source;
  if (own === undefined) return undefined;
  return own === source ? { source, sourceNote } : { source: own };
}

type Given = readonly [UseName, keyof AnimalKind, string | undefined];

function textsOf(kind: AnimalKind, lines: readonly Line[]): readonly Given[] {
  return [
    ['speciesCeiling', 'ceiling', degC(kind.ceiling)],
    ['speciesFloor', 'floor', degC(kind.floor)],
    ['bandLow', 'bandLow', percent(kind.bandLow)],
    ['bandHigh', 'bandHigh', percent(kind.bandHigh)],
    ['dipAllowed', 'dipAllowed', percent(kind.dipAllowed)],
    ['coverVent', 'vents', ventOf(kind, lines)],
    // What eats isopods leaves none to begin with.
    ['isopodFounders', 'eatsIsopods', kind.eatsIsopods === true ? '0 each' : undefined],
  ];
}

/** A strip, or half the depth of the tank by a rule. */
function ventOf({ vents }: AnimalKind, lines: readonly Line[]): string | undefined {
  if (vents === undefined) return undefined;
  if (vents !== 'large') return vents === 'small' ? '25 mm' : '50 mm';
  const depth = lineFor(lines, 'overallDepth');
  return depth && `0.5 * ${depth.name}`;
}

function degC(value: number | undefined): string | undefined {
  return value === undefined ? undefined : `${value} degC`;
}

function percent(value: number | undefined): string | undefined {
  return value === undefined ? undefined : `${cleanNoise(value * 100)} %`;
}
