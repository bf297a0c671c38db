import { cautionEntry } from '#shared-calc/cautions/all-cautions.ts';
import type { Decides } from '#shared-calc/cautions/deciders.ts';
import { peopleCaution, type PeopleQuestion } from '#shared-calc/cautions/people-near.ts';
import type { CheckResult, CheckState } from '#shared-calc/bench/bench-types.ts';
import { stateOfAnswer } from '#shared-calc/bench/check-state.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { listAnd } from '#shared-calc/rule/list-words.ts';
import { lazy } from '#shared-calc/records/memo.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { animalChecks, animalUses, roomOf } from './animal-checks.ts';
import { isBefore } from './move-job.ts';
import { placedSizes, type PlacedSize, type Spread } from './placed-size.ts';

/** Who decides where children under five and people at risk may be near animals. */
const HEALTH_LEAD: Decides = 'School or centre health lead, public-health office';

export const placeUses = ['underFives', 'weakImmunity', 'wayIn', 'clearSize', 'shelf', 'sun'] as const;
/** Limits of the place, then those that its animals set for a size. */
export const limitUses = [...placeUses, ...animalUses] as const;
export type PlaceUse = (typeof limitUses)[number];

/** A limit of the place; it is no line of a recipe. What nobody asked is not known yet. */
export interface PlaceCheck extends Pick<CheckResult, 'level' | 'state' | 'says' | 'decides'> {
  readonly use: PlaceUse;
}

/** The place of a job, and how far the job is. */
type PlaceOf = Pick<Job, 'survey' | 'state'>;

/** Before anybody goes to a place. */
export const unseenPlace: PlaceOf = { survey: unasked, state: 'enquiry' };

/** What stands where: the answers of the survey, and every size that comes there. */
export interface Placed extends PlaceOf {
  readonly sizes: readonly PlacedSize[];
  readonly display: Display;
}

/**
 * The limits of the place and of its animals for a size of a bench; the sizes are read when the first is asked for. An
 * order without a job has no animals.
 */
export function benchPlace(
  bench: Bench,
  { survey, state }: PlaceOf,
  display: Display,
  sizes = () => placedSizes(bench),
): (column: string) => readonly PlaceCheck[] {
  const limitsOf = lazy(() => placeOf({ survey, state, sizes: sizes(), display }));
  return (column) => {
    const { animals } = bench.input().columns.find(({ key }) => key === column) ?? {};
    const limits = limitsOf()(column);
    if (!animals) return limits;
    const near = animals.count === 0 ? limits.map(withoutAnimals) : limits;
    return [...near, ...animalChecks(animals, roomOf(bench, column), display)];
  };
}

/** Where only plants are kept no animal makes anybody ill. */
function withoutAnimals(check: PlaceCheck): PlaceCheck {
  if (check.use !== 'underFives' && check.use !== 'weakImmunity') return check;
  return { ...check, state: 'holds', says: 'Plants only, as said for this size: no animals here.' };
}

/** The limits of the place for one size. */
export function placeChecks(placed: Placed, key: string): readonly PlaceCheck[] {
  return placeOf(placed)(key);
}

/** The limits of the place, by size. What hangs on all sizes together is worked once for all of them. */
function placeOf(placed: Placed): (key: string) => readonly PlaceCheck[] {
  const sizes = new Map(placed.sizes.map((size) => [size.key, size]));
  const row = lazy(() => rowOf(placed));
  return (key) => {
    const size = sizes.get(key);
    if (!size) return [];
    return [
      people(placed, 'underFives'),
      people(placed, 'weakImmunity'),
      wayIn(placed, size),
      clearSize({ ...placed, row: row() }, size),
      shelf({ ...placed, row: row() }, size),
      sun(placed, size),
    ];
  };
}

/** All sizes of a job side by side on one shelf. */
interface Row {
  /** `T05, 2 of T07 and T08`; empty if there is but one tank. */
  readonly called: string;
  readonly lengthMm: number | undefined;
  readonly likelyKg: number | undefined;
  readonly worstKg: number | undefined;
  /** What each size comes to alone, in brackets, while it may be built instead of another. */
  readonly aloneMm: string;
  readonly aloneKg: string;
}

interface InRow extends Placed {
  readonly row: Row;
}

function rowOf(placed: Placed): Row {
  const { sizes } = placed;
  const length = ({ lengthMm }: PlacedSize) => lengthMm;
  const worst = ({ massKg }: PlacedSize) => massKg?.worst;
  return {
    called: severalIn(sizes) ? listOf(sizes) : '',
    lengthMm: inRow(sizes, length),
    likelyKg: inRow(sizes, ({ massKg }) => massKg?.likely),
    worstKg: inRow(sizes, worst),
    aloneMm: aloneWords(placed, length, mm),
    aloneKg: aloneWords(placed, worst, kg),
  };
}

const peopleLimits = {
  underFives: { level: 'stop', none: 'No child under five comes near it, as asked.' },
  weakImmunity: { level: 'watch', none: 'Nobody over 65 or with weak immunity comes near it, as asked.' },
} as const;

/** Cards and papers mind the same people in the same words. */
function people({ survey }: Placed, use: PeopleQuestion): PlaceCheck {
  const { level, none } = peopleLimits[use];
  const check = { use, level, decides: HEALTH_LEAD };
  const caution = peopleCaution(survey, use);
  if (!caution) return { ...check, state: 'holds', says: none };
  const { says, decides } = cautionEntry(caution);
  const minded = { ...check, decides };
  return survey[use] === 'not asked' ? unknown(minded, says) : { ...minded, state: 'fails', says };
}

/**
 * A planted tank is carried upright, so a low height does not help: the lesser of its two outer widths decides, for a
 * hexagon or cylinder the overall one. A tank exactly as wide as the way in does not pass.
 */
function wayIn({ survey: { narrowestMm }, display }: Placed, { lengthMm, depthMm }: PlacedSize): PlaceCheck {
  const check = { use: 'wayIn', level: 'stop', decides: 'Crew leader' } as const;
  if (lengthMm === undefined || depthMm === undefined) {
    return unknown(check, 'How wide the tank is outside is not known yet.');
  }
  const least = Math.min(lengthMm, depthMm);
  const carried = `Carried upright, never on its side, the tank is ${mm(least, display)} at its narrowest outside`;
  if (narrowestMm === null) return unknown(check, `${carried}; nobody has measured the way in. Measure it there.`);
  const says = `${carried}; the way in is ${mm(narrowestMm, display)} at its narrowest.`;
  return { ...check, state: stateOfAnswer(least < narrowestMm), says };
}

interface Side {
  readonly says: string;
  readonly has: number | undefined;
  readonly clear: number | null;
}

/** Outside size against the clear size. In length the sizes stand in one row. */
function clearSize({ survey, row, display }: InRow, size: PlacedSize): PlaceCheck {
  const check = { use: 'clearSize', level: 'stop', decides: 'Builder' } as const;
  const side = (what: string, has: number | undefined, clear: number | null, alone = ''): Side => {
    const room = clear === null ? 'clear not asked' : `clear ${mm(clear, display)}`;
    return { has, clear, says: `${what} ${has === undefined ? 'not known' : mm(has, display)}${alone}, ${room}` };
  };
  const sides = [
    side(row.called === '' ? 'length' : `${row.called} in a row`, row.lengthMm, survey.clearLengthMm, row.aloneMm),
    side('depth', size.depthMm, survey.clearDepthMm),
    side('height with its cover', size.heightMm, survey.clearHeightMm),
  ];
  const over = sides.filter(({ has, clear }) => has !== undefined && clear !== null && has > clear);
  if (over.length > 0) return { ...check, state: 'fails', says: `Outside it does not fit: ${saidOf(over)}.` };
  if (sides.some(({ clear }) => clear === null)) {
    return unknown(check, `Nobody has measured all of the clear room: ${saidOf(sides)}. Measure it there.`);
  }
  if (sides.some(({ has }) => has === undefined)) return unknown(check, `The outside is not known: ${saidOf(sides)}.`);
  return { ...check, state: 'holds', says: `Outside it fits, lamps and hands above it not counted: ${saidOf(sides)}.` };
}

function saidOf(sides: readonly Side[]): string {
  return sides.map(({ says }) => says).join('; ');
}

/** All sizes on one shelf, each with its drain blocked, at the worst end of their guesses. */
function shelf({ survey, row, display }: InRow, { ratingKg, shelfShare }: PlacedSize): PlaceCheck {
  const check = { use: 'shelf', level: 'stop', decides: 'Building owner or structural engineer' } as const;
  const { likelyKg: likely, worstKg: worst } = row;
  const who = row.called === '' ? 'Filled it weighs' : `${row.called} together weigh`;
  const what = worst === undefined ? 'what is not known yet' : `${kg(worst, display)} at worst`;
  const load = `${who} ${what}, with the drain blocked${row.aloneKg}`;
  if (survey.shelfRatingKg === null || ratingKg === undefined) {
    return unknown(check, `${load}; nobody has asked what the shelf is rated for. Ask the building owner.`);
  }
  if (likely === undefined || worst === undefined) return unknown(check, `${load}.`);
  const most = ratingKg * shelfShare;
  const says = `${load}; the shelf is rated for ${kg(ratingKg, display)}, of which ${kg(most, display)} are used.`;
  return withState(check, spreadState({ likely, worst }, most), says);
}

/** Sun is counted in the hottest day by the glass that it strikes. */
function sun({ survey, display }: Placed, { sunM2, hottestC, ceilingC }: PlacedSize): PlaceCheck {
  const check = { use: 'sun', level: 'stop', decides: 'Experienced keeper or vet' } as const;
  const { sunHours, sunAreaM2 } = survey;
  if (sunHours === null && sunAreaM2 === null) {
    return unknown(
      check,
      'Nobody has asked whether the sun strikes the glass; the hottest day counts none. Ask the caretaker.',
    );
  }
  if (sunM2 === undefined) {
    return unknown(check, `The sun strikes the glass ${sunHours ?? 0} h a day; measure how much of it.`);
  }
  if (sunM2 === 0) return { ...check, state: 'holds', says: 'No sun strikes the glass, as asked.' };
  const struck = `Sun on ${showWithUnit(sunM2, 'm2', display)} of glass`;
  if (hottestC === undefined || ceilingC === undefined) {
    return unknown(check, `${struck}; what the tank comes to on the hottest day is not known yet.`);
  }
  const says = `${struck}: ${degC(hottestC.likely, display)} on the hottest day, ${degC(hottestC.worst, display)} at worst; the ceiling of the animals is ${degC(ceilingC, display)}.`;
  return withState(check, spreadState(hottestC, ceilingC), says);
}

type Check = Pick<PlaceCheck, 'use' | 'level' | 'decides'>;

/** Not known yet is a watch, whatever the check's own level. */
function unknown(check: Check, says: string): PlaceCheck {
  return { ...check, level: 'watch', state: 'not known yet', says };
}

/** What may not hold is a watch, too. */
function withState(check: Check, state: CheckState, says: string): PlaceCheck {
  return { ...check, level: state === 'may not hold' ? 'watch' : check.level, state, says };
}

const SLACK = 1e-9;

function spreadState({ likely, worst }: Spread, most: number): CheckState {
  if (likely > most + SLACK) return 'fails';
  return worst > most + SLACK ? 'may not hold' : 'holds';
}

/** The figures of all builds together; `undefined` if one is not known. */
function inRow(sizes: readonly PlacedSize[], of: (size: PlacedSize) => number | undefined): number | undefined {
  let sum = 0;
  for (const size of sizes) {
    const one = of(size);
    if (one === undefined) return undefined;
    sum += one * size.count;
  }
  return sum;
}

function severalIn(sizes: readonly PlacedSize[]): boolean {
  return sizes.length > 1 || sizes.some(({ count }) => count > 1);
}

/** `T05, 2 of T07 and T08` */
function listOf(sizes: readonly PlacedSize[]): string {
  return listAnd(sizes.map(buildsOf));
}

function buildsOf({ called, count }: PlacedSize): string {
  return count === 1 ? called : `${count} of ${called}`;
}

/** More than anybody reads one by one. */
const MOST_ALONE = 6;

/**
 * ` (alone T05 45.00 kg, T07 90.00 kg)`: until a job is accepted its sizes may stand together, or one instead of
 * another.
 */
function aloneWords(
  { sizes, state, display }: Placed,
  of: (size: PlacedSize) => number | undefined,
  show: (value: number, display: Display) => string,
): string {
  if (sizes.length < 2 || !isBefore(state, 'accepted')) return '';
  const each = sizes.map((size) => ({ size, sum: inRow([size], of) }));
  const known = each.flatMap(({ sum }) => sum ?? []);
  if (known.length === 0) return '';
  if (sizes.length > MOST_ALONE) {
    const [least, most] = [Math.min(...known), Math.max(...known)];
    return ` (each alone ${show(least, display)} to ${show(most, display)})`;
  }
  const words = each.map(
    ({ size, sum }) => `${buildsOf(size)} ${sum === undefined ? 'not known' : show(sum, display)}`,
  );
  return ` (alone ${words.join(', ')})`;
}

function mm(value: number, display: Display): string {
  return showWithUnit(value / 1000, 'mm', display);
}

function kg(value: number, display: Display): string {
  return showWithUnit(value, 'kg', display);
}

function degC(value: number, display: Display): string {
  return showWithUnit(toBase(value, unitOf('degC')), 'degC', display);
}
