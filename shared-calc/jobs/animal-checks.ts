import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import { figureFor } from '#shared-calc/bench/figure-for.ts';
import { stateOfAnswer } from '#shared-calc/bench/check-state.ts';
import type { Decides } from '#shared-calc/cautions/deciders.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { showGiven, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { SizeAnimals } from '#shared-calc/recipe/column.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';

export const animalUses = ['animalKind', 'animalRoom', 'animalGroup'] as const;

/** A limit that its animals set for a size; it is no line of a recipe. */
export interface AnimalCheck extends Pick<CheckResult, 'level' | 'state' | 'says' | 'decides'> {
  readonly use: (typeof animalUses)[number];
}

/** What a tank offers inside; `undefined` while it is not known. */
export interface Room {
  readonly floorM2: number | undefined;
  readonly heightMm: number | undefined;
}

/** The floor and the height inside a size of a bench. */
export function roomOf(bench: Bench, column: string): Room {
  return {
    floorM2: figureFor(bench, column, 'floorArea', 'm2'),
    heightMm: figureFor(bench, column, 'insideHeight', 'mm'),
  };
}

const KEEPER: Decides = 'Experienced keeper';

export const NO_KIND = "No kind named: ceiling, floor and band are the house's.";
const NO_KIND_KNOWN = `${NO_KIND} Whether it crushes small plants is not known yet.`;

/** `4 of Small bold frog`, or that nobody has named a kind. */
export function sayAnimals({ kind, count }: SizeAnimals): string {
  if (count === 0) return 'Plants only';
  if (!kind) return NO_KIND;
  return count === undefined ? `${kind.label}, how many is not known yet` : `${count} of ${kind.label}`;
}

/** What a size offers its animals, and what is not known of them. A tank of plants only has none to mind. */
export function animalChecks(animals: SizeAnimals, room: Room, display: Display): readonly AnimalCheck[] {
  const { kind, count } = animals;
  if (count === 0) return [];
  if (!kind) return [unknown('animalKind', NO_KIND_KNOWN)];
  return [envelope(kind), roomFor(kind, room, display), group(kind, count)];
}

const envelopeFields = ['ceiling', 'actFrom', 'floor', 'bandLow', 'bandHigh'] as const;

function envelope(kind: AnimalKind): AnimalCheck {
  const lacks = envelopeFields.filter((key) => kind[key] === undefined).map((key) => calledOf('animalKind', key));
  if (lacks.length > 0) {
    const words = lacks.join(', ').toLowerCase();
    return unknown(
      'animalKind',
      `Not in the animal book for ${kind.label}: ${words}. The house's stand in their place.`,
    );
  }
  const says = `${kind.label}: its own ceiling, act-from temperature, floor and humidity.`;
  return { use: 'animalKind', level: 'watch', state: 'holds', says, decides: KEEPER };
}

function roomFor({ label, leastFloor, leastHeight }: AnimalKind, room: Room, display: Display): AnimalCheck {
  const { floorM2, heightMm } = room;
  if (leastFloor === undefined || leastHeight === undefined)
    return unknown('animalRoom', `How much room ${label} wants is not known yet. Ask the keeper.`);
  if (floorM2 === undefined || heightMm === undefined)
    return unknown('animalRoom', 'How much room the tank has inside is not known yet.');
  const words = (floor: number, height: number) =>
    `${given(floor, 'm2', display)} of floor and ${given(toBase(height, unitOf('mm')), 'mm', display)} of height`;
  const holds = floorM2 >= leastFloor - SLACK && heightMm >= leastHeight - SLACK;
  const says = `${label} wants ${words(leastFloor, leastHeight)}; this tank has ${words(floorM2, heightMm)} inside.`;
  return { use: 'animalRoom', level: 'stop', state: stateOfAnswer(holds), says, decides: KEEPER };
}

function given(value: number, unit: string, display: Display): string {
  return `${showGiven(value, unit, display)}\u00a0${shownUnit(unit, display)}`;
}

const SLACK = 1e-9;

function group({ label, groupLeast, groupMost }: AnimalKind, count: number | undefined): AnimalCheck {
  if (count === undefined) return unknown('animalGroup', `Nobody has said how many of ${label} go in. Ask the client.`);
  if (groupLeast === undefined || groupMost === undefined)
    return unknown('animalGroup', `How many of ${label} are kept together is not known yet. Ask the keeper.`);
  const holds = count >= groupLeast && count <= groupMost;
  const together = groupLeast === groupMost ? `${groupLeast}` : `${groupLeast} to ${groupMost}`;
  const says = `${count} of ${label} go in; ${together} are kept together.`;
  return { use: 'animalGroup', level: 'watch', state: stateOfAnswer(holds), says, decides: KEEPER };
}

function unknown(use: AnimalCheck['use'], says: string): AnimalCheck {
  return { use, level: 'watch', state: 'not known yet', says, decides: KEEPER };
}
