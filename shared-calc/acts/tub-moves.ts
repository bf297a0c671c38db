import { z } from 'zod';
import { dayFault, type Day as PlainDay } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { animalsOn, dayNumber, mayTakeOn, tubStock, type TubStock } from '#shared-calc/prepare/tub-stock.ts';
import { moveIds } from '#shared-calc/jobs/written-moves.ts';
import { tubGrowth } from '#shared-calc/prepare/standing-tub.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { added, emptyChange, updated, type Change } from '#shared-calc/records/change.ts';
import type { CultureKind, Move, Tub } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from './act-fault.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { recordAdded } from './record-changes.ts';

interface OpenTub {
  readonly tub: Tub;
  readonly kind: CultureKind;
  readonly moves: readonly Move[];
  /** Nothing where its growth is not known, until it is counted. */
  readonly stock: TubStock | undefined;
}

/** A tub that stands on a day, with its moves; one with a later move is refused, for that was worked from this day. */
function openTub({ records, display }: Derived, id: string, on: PlainDay): Result<OpenTub, ActFault> {
  const tub = findRecord(records, 'tub', id);
  if (!tub.ok) return tub;
  const kind = findRecord(records, 'cultureKind', tub.value.kind);
  if (!kind.ok) return kind;
  const moves = [...records.move.values()].filter(({ lot }) => lot === id);
  const fault = dayFault(on) ?? notOpen(tub.value, moves, { on, display });
  if (fault) return failed(fault);
  return ok({ tub: tub.value, kind: kind.value, moves, stock: stockOn(tub.value, kind.value, { moves, on }) });
}

function notOpen(
  { id: tub, startedOn, endedOn = '9999-12-31' }: Tub,
  moves: readonly Move[],
  { on, display }: { readonly on: PlainDay; readonly display: Display },
): ActFault | undefined {
  if (on < startedOn || on >= endedOn) return { kind: 'tub-not-standing', tub, on, display };
  return moves.some((move) => move.on > on) ? { kind: 'tub-moved-later', tub, on, display } : undefined;
}

function stockOn(
  { startedOn, founders, degC }: Tub,
  kind: CultureKind,
  { moves, on }: { readonly moves: readonly Move[]; readonly on: PlainDay },
): TubStock | undefined {
  const growth = tubGrowth({ degC, moves }, kind, on);
  return growth && tubStock(kind, growth.perDay, { startedOn, founders, moves });
}

function newMove({ records }: Derived, { tub }: OpenTub, rest: Omit<Move, 'id' | 'lot' | 'of' | 'note'>): Move {
  return { id: moveIds(records)(), lot: tub.id, of: tub.kind, note: '', ...rest };
}

const Animals = z.number().min(0.1).max(10_000_000);

const HarvestTub = z.strictObject({
  tub: z.string(),
  amount: Animals.optional().describe('Left out: all that it may give.'),
  job: z.string().optional(),
  sold: z.boolean().default(false),
  on: Day.optional().describe('Left out: today.'),
});

export const harvestTub = act<z.infer<typeof HarvestTub>>({
  name: 'harvestTub',
  says: 'Takes animals out of a tub, for a job or to sell; what is over of a floated share is written as wasted.',
  input: HarvestTub,
  run: (derived, { tub: id, amount, job, sold, on = derived.today }) => {
    const open = openTub(derived, id, on);
    if (!open.ok) return open;
    const given = givenOn(open.value, on);
    if (!given) return failed({ kind: 'tub-not-known', tub: id });
    const { may, over } = given;
    const asked = amount ?? may;
    if (asked > may + LITTLE || asked <= 0)
      return failed({ kind: 'tub-gives-less', tub: id, asked, may, on, display: derived.display });
    const what = sold ? 'sold' : 'used';
    const taken = { ...newMove(derived, open.value, { on, what, amount: -asked }), ...(job !== undefined && { job }) };
    const change = { ...emptyChange(`${Math.round(asked)} taken from tub ${id}`), added: [added('move', taken)] };
    return ok(open.value.kind.taken === 'picked' ? change : withRest(change, { taken, over, rest: may - asked }));
  },
});

/** What may be taken on a day, and what is over of a float of that day; nothing where the tub is not known. */
function givenOn(
  { stock, kind, moves }: OpenTub,
  on: PlainDay,
): { readonly may: number; readonly over: Move | undefined } | undefined {
  if (!stock) return undefined;
  const over = kind.taken === 'floated' ? overOn(moves, on) : undefined;
  return { may: over ? -over.amount : mayTakeOn(stock, dayNumber(on)), over };
}

/** What is over of a float; the jobs of one day share it. */
function overOn(moves: readonly Move[], on: PlainDay): Move | undefined {
  return moves.find((move) => move.on === on && move.what === 'wasted');
}

const LITTLE = 1e-6;

interface Floated {
  readonly taken: Move;
  /** What was over of the same float until now. */
  readonly over: Move | undefined;
  readonly rest: number;
}

/** The change of a harvest with what is over of the floated share written as wasted. */
function withRest(change: Change, { taken, over, rest }: Floated): Change {
  const left = rest > LITTLE;
  if (over) {
    return left
      ? { ...change, updated: [updated('move', over, { ...over, amount: -rest })] }
      : { ...change, removed: [added('move', over)] };
  }
  const { id, lot, of, on, note } = taken;
  const wasted: Move = { id: `${id}-over`, lot, of, on, note, what: 'wasted', amount: -rest };
  return left ? { ...change, added: [...change.added, added('move', wasted)] } : change;
}

const CountTub = z.strictObject({
  tub: z.string(),
  animals: z.int().min(0).max(10_000_000),
  on: Day.optional().describe('Left out: today.'),
});

export const countTub = act<z.infer<typeof CountTub>>({
  name: 'countTub',
  says: 'Writes down how many animals were counted in a tub; it grows from there.',
  input: CountTub,
  run: (derived, { tub: id, animals, on = derived.today }) => {
    const open = openTub(derived, id, on);
    if (!open.ok) return open;
    const move = newMove(derived, open.value, { on, what: 'counted', amount: animals });
    return ok(recordAdded(`tub ${id} counted`, 'move', move));
  },
});

interface Split {
  readonly from: string;
  readonly founders: number;
  readonly on: PlainDay;
  readonly into: string;
}

/** The animals of a split, taken from the tub that gives them. */
export function splitFrom(derived: Derived, { from, founders, on, into }: Split): Result<readonly Move[], ActFault> {
  const open = openTub(derived, from, on);
  if (!open.ok) return open;
  const { stock } = open.value;
  if (!stock) return failed({ kind: 'tub-not-known', tub: from });
  const stands = animalsOn(stock, dayNumber(on));
  if (founders > stands)
    return failed({ kind: 'tub-gives-less', tub: from, asked: founders, may: stands, on, display: derived.display });
  return ok([{ ...newMove(derived, open.value, { on, what: 'used', amount: -founders }), note: `split into ${into}` }]);
}
