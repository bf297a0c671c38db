import { beforeAll, describe, expect, test } from 'vitest';
import { lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Order } from '#shared-calc/records/records.ts';
import { act, build, holds, issue, openSeason, place, receive, sell, type Season } from './season-acts.ts';
import { goods, leastCoins, newPencil, rise, type Good } from './season-pencil.ts';

const END = '2027-07-21';

/** Coins that each order may cost at most, by the offers of its day. */
const least: number[] = [];
let season: Season;
let revised = '';

function orderNow(day: string, jobs: readonly string[]): ReadonlyMap<Good, Order> {
  const from = season.placed.length;
  const placed = place(season, day, jobs);
  for (const { good, wanted } of season.placed.slice(from)) least.push(leastCoins(season.pencil, good, wanted));
  return placed;
}

function receiveAll(day: string, orders: ReadonlyMap<Good, Order>, but: readonly Good[] = []): void {
  for (const [good, order] of orders) if (!but.includes(good)) receive(season, day, { good, order });
}

function firstRound(): readonly string[] {
  const jobs = [1, 2, 1].map((builds) => sell(season, '2027-03-08', builds));
  receiveAll('2027-03-18', orderNow('2027-03-08', jobs));
  return jobs;
}

/** Clay is dearer by 12 %, one bag dearer still on the bill; the timers come twelve days late. */
function secondRound(): readonly string[] {
  act(season, '2027-03-30', 'raisePrices', { supplier: 'S-hollin', share: 0.12, from: '2027-04-01' });
  rise(season.pencil, 'M01', 12);
  const jobs = [1, 1, 2].map((builds) => sell(season, '2027-04-05', builds));
  const orders = orderNow('2027-04-05', jobs);
  receiveAll('2027-04-15', orders, ['M01', 'M28']);
  const clay = orders.get('M01');
  const [first, ...rest] = clay?.lines ?? [];
  const dearer = first ? [{ n: first.n, count: first.count, eachCoins: first.askedCoins + 50 }] : [];
  const lines = [...dearer, ...rest.map(({ n, count }) => ({ n, count }))];
  receive(season, '2027-04-15', { good: 'M01', order: clay, lines });
  receive(season, '2027-04-19', { good: 'M28', order: orders.get('M28') });
  return jobs;
}

/** Plants are dearer by 5 %; one job is quoted anew after its yes; the plants die in quarantine and are bought again. */
function thirdRound(): readonly string[] {
  act(season, '2027-04-28', 'raisePrices', { supplier: 'S-marlvale', share: 0.05, from: '2027-05-01' });
  rise(season.pencil, 'PG', 5);
  const jobs = [1, 1, 1].map((builds) => sell(season, '2027-05-03', builds));
  revised = jobs[0] ?? '';
  act(season, '2027-05-04', 'addQuoteLine', {
    job: revised,
    label: 'An electrician',
    group: 'delivery',
    costCoins: 9500,
    by: 'client',
  });
  issue(season, revised);
  act(season, '2027-05-04', 'moveJob', { job: revised, state: 'accepted' });
  const orders = orderNow('2027-05-05', jobs);
  receiveAll('2027-05-13', orders);
  const plants = orders.get('PG');
  for (const { of, count } of plants?.lines ?? []) {
    const lot = lotsOf(season.book.records, of).find(({ came }) => came.order === plants?.id);
    act(season, '2027-05-20', 'wasteStock', { of, amount: count, lot: lot?.id, note: 'thrips, found in quarantine' });
  }
  season.pencil.stands.PG -= plants ? holds(plants) : 0;
  receiveAll('2027-05-27', orderNow('2027-05-21', jobs));
  return jobs;
}

/** One piece of cork comes, the rest never: its order is closed, and the rest is bought again. */
function fourthRound(): readonly string[] {
  const jobs = [2, 1, 1].map((builds) => sell(season, '2027-06-07', builds));
  const orders = orderNow('2027-06-07', jobs);
  receiveAll('2027-06-16', orders, ['M20']);
  const cork = orders.get('M20');
  const single = cork?.lines.find(({ amount }) => amount === 1);
  receive(season, '2027-06-16', { good: 'M20', order: cork, lines: [{ n: single?.n ?? 0, count: 1 }] });
  act(season, '2027-06-17', 'closeOrder', { order: cork?.id });
  const { coming, givenUp } = season.pencil;
  givenUp.M20 += coming.M20;
  coming.M20 = 0;
  receiveAll('2027-06-24', orderNow('2027-06-17', jobs));
  return jobs;
}

beforeAll(() => {
  season = openSeason('2027-03-08', newPencil());
  const first = firstRound();
  const second = secondRound();
  build(season, '2027-04-21', first, [1, 2, 1]);
  const third = thirdRound();
  build(season, '2027-05-31', second, [1, 1, 2]);
  const fourth = fourthRound();
  build(season, '2027-06-30', third, [1, 1, 1]);
  build(season, '2027-07-20', fourth, [2, 1, 1]);
});

describe('a season of twelve jobs', () => {
  test('each order holds what was lacking, at the least that the offers of its day allow', () => {
    const cost = ({ lines }: Order) => lines.reduce((sum, { count, askedCoins }) => sum + count * askedCoins, 0);
    const packed = season.placed.filter(({ good }) => good !== 'PG');

    expect(season.placed.filter(({ order, wanted }) => holds(order) < wanted)).toEqual([]);
    expect(packed.map(({ order }) => [order.id, cost(order)])).toEqual(
      season.placed.flatMap(({ good, order }, at) => (good === 'PG' ? [] : [[order.id, least[at]]])),
    );
  });

  test('plants are ordered one by one, each at its own price of the day', () => {
    const plants = season.placed.filter(({ good }) => good === 'PG');
    const prices = plants.map(({ order, wanted }) => [
      order.on,
      holds(order) - wanted,
      [...new Set(order.lines.map(({ of, askedCoins }) => `${of} ${askedCoins}`))].toSorted(),
    ]);

    expect(prices).toEqual([
      ['2027-03-08', 0, ['P04 290', 'P06 330']],
      ['2027-04-05', 0, ['P04 290', 'P06 330']],
      ['2027-05-05', 0, ['P04 305', 'P06 347']],
      ['2027-05-21', 0, ['P04 305', 'P06 347']],
      ['2027-06-07', 0, ['P04 305', 'P06 347']],
    ]);
  });

  test('the late timers were late while they were not there, and all jobs are built', () => {
    const { records } = season.book;
    const late = [...records.order.values()].map((order) => [
      order.supplier,
      orderStanding(records, order, '2027-04-16').lateDays,
    ]);

    expect(late.filter(([, days]) => days !== 0).map(([supplier]) => supplier)).toEqual(['S-ternfield']);
    expect([...records.job.values()].filter(({ state }) => state === 'built')).toHaveLength(12);
  });

  test('at the end ledger and count agree, and nothing is kept or to come', () => {
    const { records } = season.book;
    const stocks = goods.map((good) => stock(records, good, { asked: END }));

    expect(stocks.map(({ onHand }) => onHand)).toEqual(goods.map((good) => season.pencil.stands[good]));
    expect(stocks.map(({ kept, onOrder, quarantined }) => [kept.size, onOrder, quarantined])).toEqual(
      goods.map(() => [0, 0, 0]),
    );
    expect(Object.values(season.pencil.promised)).toEqual([0, 0, 0, 0]);
  });

  test('every order is in or closed: what was ordered came or was given up, and is paid as it was billed', () => {
    const { records } = season.book;
    const standing = [...records.order.values()].map((order) => orderStanding(records, order, END));
    const { ordered, came, givenUp, paid } = season.pencil;

    expect(standing.filter(({ state }) => state === 'closed')).toHaveLength(1);
    expect(standing.filter(({ state }) => state !== 'closed' && state !== 'in')).toEqual([]);
    expect(standing.reduce((sum, order) => sum + order.paidCoins, 0)).toBe(paid);
    expect(goods.map((good) => ordered[good])).toEqual(goods.map((good) => came[good] + givenUp[good]));
    expect([...records.move.values()].flatMap(({ coins = 0 }) => coins).reduce((sum, coins) => sum + coins, 0)).toBe(
      paid,
    );
  });

  test('the job that was quoted anew is sold as its revision, dearer by the electrician alone', () => {
    const { records } = season.book;
    const { soldAs = '' } = records.job.get(revised) ?? {};
    const sums = ['A', 'B'].map((revision) => {
      const body = readQuoteBody(records.issuedQuote.get(`${soldAs.slice(0, -1)}${revision}`)?.body ?? '');
      return body ? [body.sums.netCoins, body.sums.grossCoins] : [];
    });
    const [[net = 0, gross = 0] = [], [netB, grossB] = []] = sums;

    // At cost, and 12 % tax on it.
    expect([soldAs.at(-1), netB, grossB]).toEqual(['B', net + 9500, gross + 9500 + 1140]);
  });
});
