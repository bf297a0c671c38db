import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Move, Order, Records } from '#shared-calc/records/records.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';

/* A job of the demo, paid in February, on mornings of March; its needs stand in the ledger as far as told. */

const on = '2027-03-17';

function paidJob(): Records {
  const { records } = done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 65_000, on: '2027-02-22' });
  return records;
}

const records = paidJob();

function neededOf(groups: readonly string[]): readonly { readonly of: string; readonly amount: number }[] {
  const needs = derive(records, on).job('J02')?.needs();
  if (!needs?.ok) throw new Error('no needs');
  const wanted = needs.value.filter(({ group }) => groups.includes(group));
  return [...Map.groupBy(wanted, ({ material }) => material)].map(([of, same]) => ({
    of,
    amount: same.reduce((sum, { amount, count, perJob }) => sum + amount * (perJob ? 1 : count), 0),
  }));
}

function came(groups: readonly string[], day: string, until?: string): readonly Move[] {
  return neededOf(groups).flatMap(({ of, amount }) => {
    const move = { lot: `L-${of}`, of, on: day, amount, note: '' };
    return [
      { ...move, id: `M-${of}`, what: 'in', ...(until !== undefined && { until }) },
      { ...move, id: `M-${of}-kept`, what: 'kept', job: 'J02' },
    ];
  });
}

function withMoves(moves: readonly Move[], orders: readonly Order[] = []): Records {
  return {
    ...records,
    move: new Map([...records.move, ...moves.map((move) => [move.id, move] as const)]),
    order: new Map(orders.map((order) => [order.id, order])),
  };
}

function planOf(book: Records, day = on) {
  const plan = derive(book, day).job('J02')?.plan();
  if (!plan?.ok) throw new Error('no plan');
  return plan.value.plan;
}

const stepOf = (book: Records, name: string) => planOf(book).steps.find(({ step }) => step === name);

describe('goods of a job in its plan', () => {
  test('plants that came and are kept for it are in until they are cleared, and nothing is to be ordered', () => {
    const book = withMoves(came(['plants'], '2027-03-02', '2027-04-01'));
    expect(stepOf(records, 'plants')).toMatchObject({ state: 'open', orderBy: expect.any(String) as string });
    expect(stepOf(book, 'plants')).toEqual({
      step: 'plants',
      state: 'in',
      date: '2027-03-02',
      on: '2027-03-02',
      cleared: '2027-04-01',
    });
    expect(planOf(book).because).not.toBe('plant quarantine');
  });

  test('goods that stand in the store and are kept for nobody do not make a step of it in', () => {
    const book = withMoves(came(['plants'], '2027-03-02', '2027-04-01').filter(({ what }) => what !== 'kept'));
    expect(stepOf(book, 'plants')?.state).toBe('open');
  });

  test('an order placed for it: ordered, due on its day, overdue once that is past', () => {
    const lines = neededOf(['plants']).map(({ of, amount }, at) => ({
      n: at + 1,
      of,
      label: of,
      amount: 1,
      unit: 'each',
      count: amount,
      askedCoins: 390,
      due: '2027-03-16',
      for: [{ job: 'J02', amount }],
    }));
    const order: Order = { id: 'O-0001', supplier: 'S-marlvale', on: '2027-03-08', lines, carriageCoins: 0, note: '' };
    const book = withMoves([], [order]);
    expect(planOf(book, '2027-03-10').steps.find(({ step }) => step === 'plants')).toEqual({
      step: 'plants',
      state: 'ordered',
      date: '2027-03-16',
      due: '2027-03-16',
    });
    // Wednesday 17 March is a delivery day.
    expect(stepOf(book, 'plants')).toMatchObject({ due: '2027-03-16', date: '2027-03-17', overdue: true });
  });
});
