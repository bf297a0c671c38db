import { goodsInLedger, membersOf, NOTHING, stock, stockOf, type LotStock } from '#shared-calc/buy/ledger.ts';
import { countGuesses, countMissing } from '#shared-calc/buy/say-missing.ts';
import { daysBetween } from '#shared-calc/calendar/day.ts';
import type { IssuedQuote, Job } from '#shared-calc/records/records.ts';
import { goodsLabel, unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { quoteDifferences } from '#shared-calc/jobs/quote-differences.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { batchesNow } from '#shared-calc/prepare/animal-quarantine.ts';
import { savedWatch } from '#shared-calc/prepare/saved-watch.ts';
import { sayDays, sayPlainDate } from '#shared-calc/prepare/say-day.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { DoneStep } from '#shared-calc/fields/done.ts';
import type { Derived, DerivedJob } from './derived.ts';
import { planActs } from './plan-acts.ts';
import { openChecks, type CheckedOrder, type FailingCheck } from './failing-checks.ts';

/** One thing that stands against a move of a job, or against issuing its quote. */
export interface Against {
  readonly what: AgainstWhat;
  readonly why: string;
}

/** Gravest first: a long list never hides a stop. */
export const againstWhats = [
  'stop',
  'quarantine',
  'watch not signed',
  'deposit',
  'goods',
  'quote',
  'open step',
  'not known yet',
  'may not hold',
  'watch',
] as const;
export type AgainstWhat = (typeof againstWhats)[number];

type State = Job['state'];

/** What stands against moving a job to a state. Nothing stands against a step back, or against closing a job. */
export function againstMove(derived: Derived, id: string, to: State): readonly Against[] {
  const worked = derived.job(id);
  if (!worked || !isForward(worked.job.state, to)) return [];
  return inOrder([
    ...againstIssue(worked, derived.display),
    ...(reaches(to, 'deposit in') ? againstDeposit(worked.job) : []),
    ...(reaches(to, 'accepted') ? againstQuote(derived, worked) : []),
    ...(reaches(to, 'accepted') && isBefore(openState(worked.job.state), 'deposit in') ? againstPrice(worked) : []),
    ...(reaches(to, 'in quarantine') ? againstGoods(derived, worked) : []),
    ...(reaches(to, 'ready to build') ? againstSteps(derived, worked, to) : []),
    ...(reaches(to, 'handed over') ? [...againstWatch(derived, worked), ...againstAnimals(derived, worked)] : []),
  ]);
}

/** What stands against issuing the quote of an order: checks that do not hold or are not known yet, advice apart. */
export function againstIssue(order: CheckedOrder, display: Display): readonly Against[] {
  if (order.keys.length === 0) return [{ what: 'not known yet', why: 'No size is taken yet: nothing is checked.' }];
  const { columns } = order.bench.input();
  const called = new Map(columns.map((column) => [column.key, calledOf(column)]));
  const open = openChecks(order, display).filter(({ isAdvice }) => !isAdvice);
  return inOrder(
    open.map((check) => ({
      what: whatOf(check),
      why: `${check.sizes.map((key) => called.get(key) ?? key).join(', ')}: ${check.says}`,
    })),
  );
}

/** States that a job does not reach against anything without a name and a reason, by a step over them neither. */
export function wantsReason(from: State, to: State): boolean {
  if (!isForward(from, to)) return false;
  return to === 'in service' ? isBefore(openState(from), 'handed over') : !isBefore(to, 'built');
}

function isForward(from: State, to: State): boolean {
  return to !== 'closed' && to !== 'enquiry' && isBefore(openState(from), to);
}

/** A closed job that is opened again begins anew. */
function openState(state: State): State {
  return state === 'closed' ? 'enquiry' : state;
}

function reaches(to: State, state: State): boolean {
  return !isBefore(to, state);
}

function inOrder(against: readonly Against[]): readonly Against[] {
  return against.toSorted((one, other) => againstWhats.indexOf(one.what) - againstWhats.indexOf(other.what));
}

function whatOf({ state, level }: FailingCheck): AgainstWhat {
  if (state === 'not known yet' || state === 'may not hold') return state;
  return level === 'stop' ? 'stop' : 'watch';
}

function againstDeposit({ id, depositOn }: Job): readonly Against[] {
  return depositOn === undefined ? [{ what: 'deposit', why: `No deposit of ${id} is recorded.` }] : [];
}

/** The quote of a job is what it was issued for: what was written in the job since wants a revision. */
function againstQuote({ records }: Derived, worked: DerivedJob): readonly Against[] {
  const { id } = worked.job;
  const latest = latestQuote(records, id);
  const quote = latest && (worked.sold?.quote ?? latest);
  const count = quote && differenceCount(worked, quote);
  if (!quote || count === undefined) return [{ what: 'quote', why: `No quote of ${id} has been issued.` }];
  if (count === 0) return [];
  const things = count === 1 ? '1 thing' : `${count} things`;
  return [{ what: 'quote', why: `${id} differs from quote ${quote.id} in ${things}: issue a revision.` }];
}

/** A price that is agreed on without all its figures, or with guesses. */
function againstPrice({ known }: DerivedJob): readonly Against[] {
  const sums = known();
  if (!sums.ok) return [];
  const { missing, guesses } = sums.value;
  // A measure that is missing is told by the checks that wait for it.
  const kinds = [...Map.groupBy(missing, ({ what }) => what)].filter(([what]) => what !== 'measure');
  return [
    ...kinds.map(([, same]) => ({ says: countMissing(same), of: same })),
    ...(guesses.length === 0 ? [] : [{ says: countGuesses(guesses), of: guesses }]),
  ].map(({ says, of }) => ({ what: 'not known yet', why: `${says}: ${firstOf(of.map(({ label }) => label))}.` }));
}

function differenceCount({ sheet, sold }: DerivedJob, quote: IssuedQuote): number | undefined {
  if (sold) return sold.differs().changed.length;
  const body = bodyOf(quote);
  return body && quoteDifferences(sheet, body).length;
}

/** Until it is built, what the Store cannot give for it; later, plants kept for it that still stand apart. */
function againstGoods(derived: Derived, worked: DerivedJob): readonly Against[] {
  const { id, state } = worked.job;
  if (!isBefore(openState(state), 'built'))
    return sayApart(
      derived,
      apartOf(derived, goodsInLedger(derived.records), ({ kept }) => kept.has(id)),
    );
  const uses = worked.uses();
  if (!uses.ok)
    return [{ what: 'goods', why: `What ${id} needs is not known yet, so nobody knows what must come in.` }];
  const { records, today: asked } = derived;
  const apart: LotStock[] = [];
  const out: string[] = [];
  for (const [material, amount] of uses.value) {
    const now = stock(records, material, { asked });
    const lacking = amount - now.free - (now.kept.get(id) ?? 0);
    if (lacking <= NOTHING) continue;
    const held = apartOf(derived, membersOf(records, material), (lot) => lot.loose > NOTHING || lot.kept.has(id));
    apart.push(...held);
    const rest = lacking - held.reduce((sum, lot) => sum + lot.loose + (lot.kept.get(id) ?? 0), 0);
    if (rest > NOTHING) out.push(goodsSaid(derived, material, rest));
  }
  return [...sayApart(derived, apart), ...(out.length === 0 ? [] : [{ what: 'goods', why: sayOut(out) } as const])];
}

const stepNames: Readonly<Partial<Record<DoneStep, string>>> = {
  panel: 'glue the background',
  springtails: 'start springtails',
  leaves: 'treat the leaves',
  build: 'build',
};

/** What its plan still has to do before the build; once it is handed over, also the build. */
function againstSteps({ records, calendar }: Derived, { job, plan }: DerivedJob, to: State): readonly Against[] {
  const dates = plan();
  if (!dates.ok) return [];
  const acts = planActs({ job: job.id, plan: dates.value.plan, records, calendar });
  const open = acts.flatMap(({ step }) =>
    step === 'build' && !reaches(to, 'watching') ? [] : (stepNames[step] ?? []),
  );
  return open.length === 0 ? [] : [{ what: 'open step', why: `Not done yet: ${open.join('; ')}.` }];
}

function sayOut(goods: readonly string[]): string {
  return `Not in the Store: ${firstOf(goods)}.`;
}

/** Nobody reads more of them on the way to a move. */
const MOST_GOODS = 8;

function firstOf(goods: readonly string[]): string {
  const more = goods.length > MOST_GOODS ? ` and ${goods.length - MOST_GOODS} more` : '';
  return `${goods.slice(0, MOST_GOODS).join('; ')}${more}`;
}

function goodsSaid({ records, display }: Derived, goods: string, amount: number): string {
  return `${goodsWords(amount, unitInStore(goods, records) ?? 'each', display)} of ${goodsLabel(goods, records)}`;
}

/** Lots that stand in quarantine today. */
function apartOf(
  { records, today: asked }: Derived,
  goods: readonly string[],
  passes: (lot: LotStock) => boolean,
): readonly LotStock[] {
  return stockOf(records, goods, { asked }).lots.filter((each) => each.quarantined && passes(each));
}

/** One line for each day on which plants are free. */
function sayApart(derived: Derived, lots: readonly LotStock[]): readonly Against[] {
  return [...Map.groupBy(lots, ({ lot }) => lot.came.until ?? '')]
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([until, same]) => {
      const goods = same.map(({ lot, amount }) => goodsSaid(derived, lot.of, amount));
      return {
        what: 'quarantine',
        why: `In quarantine until ${sayPlainDate(until, derived.display)}, ${sayDays(daysBetween(derived.today, until))} more: ${goods.join('; ')}.`,
      };
    });
}

function againstWatch({ records }: Derived, { sheet }: DerivedJob): readonly Against[] {
  const unsigned = sheet.columns.filter(({ size }) => !savedWatch(records, size)).map(calledOf);
  if (unsigned.length === 0) return [];
  return [{ what: 'watch not signed', why: `${unsigned.join(', ')}: no watch of temperature and humidity is signed.` }];
}

/** Animals for its sizes that still stand apart. */
function againstAnimals({ records, today: on, display }: Derived, { sheet }: DerivedJob): readonly Against[] {
  const sizes = new Set(sheet.columns.map(({ size }) => size));
  return batchesNow(records, on).flatMap(({ batch, kind, until, daysLeft, placements }) => {
    const count = placements.filter(({ size }) => sizes.has(size)).reduce((sum, each) => sum + each.count, 0);
    if (daysLeft === 0 || count === 0) return [];
    const why = `In quarantine until ${sayPlainDate(until, display)}, ${sayDays(daysLeft)} more: ${count} of ${kind.label}, batch ${batch.id}.`;
    return [{ what: 'quarantine', why }];
  });
}
