import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { readDay, type DayReading } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

export interface TypedLine {
  readonly n: number;
  readonly count: string;
  readonly paid: string;
}

/** What came of an order, as typed. */
export interface TypedDelivery {
  readonly lines: readonly TypedLine[];
  readonly on: string;
  readonly bestBefore: string;
  readonly until: string;
  readonly note: string;
}

type Read = Omit<ActInputs['receiveOrder'], 'order'>;
type Context = Pick<Derived, 'workshop' | 'display' | 'today'>;

/** The input of the act, or what cannot be parsed; a line of which nothing came is left out. */
export function readDelivery(typed: TypedDelivery, context: Context): Result<Read, string> {
  const lines: NonNullable<Read['lines']> = [];
  for (const each of typed.lines) {
    const line = readLine(each, context);
    if (!line.ok) return line;
    if (line.value.count > 0) lines.push(line.value);
  }
  if (lines.length === 0) return failed('Say how many packs came, of one line at least.');
  const [on, until, bestBefore] = [
    dayOf(typed.on, 'Came on', { ...context, nearest: true }),
    dayOf(typed.until, 'In quarantine until', context),
    dayOf(typed.bestBefore, 'Best before', context),
  ];
  if (!on.ok) return on;
  if (!until.ok) return until;
  if (!bestBefore.ok) return bestBefore;
  const days = { on: on.value, until: until.value, bestBefore: bestBefore.value };
  return ok({ lines, ...days, note: typed.note.trim() });
}

function readLine({ n, count, paid }: TypedLine, { workshop, display }: Context) {
  const packs = said(
    readMeasure(count, { name: 'Packs that came', stored: 'each', low: 0, mayBeEmpty: true }, display),
  );
  if (!packs.ok) return packs;
  const each = paid.trim() === '' ? ok(undefined) : said(readMoney(paid, workshop, 'Paid each'));
  return each.ok ? ok({ n, count: packs.value ?? 0, eachCoins: each.value }) : each;
}

/** Nothing if no day is given. */
function dayOf(text: string, name: string, reading: DayReading): Result<Day | undefined, string> {
  return text.trim() === '' ? ok(undefined) : said(readDay(text, name, reading));
}
