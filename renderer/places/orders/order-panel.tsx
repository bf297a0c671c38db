import { actNames } from '#shared-calc/words/act-names.ts';
import type { Signal } from '@preact/signals';
import type { BookContext } from '#renderer/books/book-api.ts';
import { goTo } from '#renderer/frame/go-to.ts';
import { goToBook } from '#renderer/frame/go-to-goods.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import type { EntryMenu } from '#renderer/kit/context-menu.tsx';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Muted, MutedLine } from '#renderer/kit/muted.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { Standing } from '#renderer/kit/standing.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { classPriceOf, ownPriceOf } from '#shared-calc/buy/class-price.ts';
import { isOpenOrder, type LineStanding, type OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { orderedCautions } from '#shared-calc/prepare/ordered-cautions.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { jobsOf, sayLine } from '#shared-calc/papers/supplier-orders.ts';
import { sayDays } from '#shared-calc/prepare/say-day.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { AskedOfOrders } from './asked-of-orders.ts';

interface PanelParts {
  readonly standing: OrderStanding | undefined;
  readonly context: BookContext;
  readonly api: JobApi;
  readonly asked: Signal<AskedOfOrders>;
}

/** One order: its lines with what came and what was paid, and what can be done with it. */
export function OrderPanel({ standing, ...parts }: PanelParts) {
  return (
    <SidePanel label="About the chosen order">
      {standing ? (
        <Order key={standing.order.id} standing={standing} {...parts} />
      ) : (
        <MutedLine>Choose an order to see its lines and to take in what came.</MutedLine>
      )}
    </SidePanel>
  );
}

type OrderParts = PanelParts & { readonly standing: OrderStanding };

function Order({ standing, context, api, asked }: OrderParts) {
  const { order, goodsCoins } = standing;
  const { records, workshop } = context;
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  return (
    <>
      <PanelHead
        where={`Orders, ${records.supplier.get(order.supplier)?.name ?? order.supplier}`}
        title={order.id}
        answer={money(goodsCoins)}
      />
      <StandingLine standing={standing} context={context} />
      <FactList facts={factsOf(standing, context)} />
      <Lines standing={standing} context={context} asked={asked} />
      <OrderButtons standing={standing} api={api} asked={asked} />
      {order.note !== '' && <Hint>{order.note}</Hint>}
      <CautionList cautions={orderedCautions(records, [order])} display={context.display} />
    </>
  );
}

function StandingLine({
  standing: { state, lateDays, due },
  context: { display },
}: Pick<OrderParts, 'standing' | 'context'>) {
  if (lateDays > 0)
    return (
      <Standing state="stop" sign="stop">
        <span>
          {state}, and {sayDays(lateDays)} late: ask.
        </span>
      </Standing>
    );
  const says = {
    open: `Due ${paperDay(due, display)}.`,
    'part in': `Part in; the rest is due ${paperDay(due, display)}.`,
  };
  if (state === 'open' || state === 'part in') return <MutedLine>{says[state]}</MutedLine>;
  return <MutedLine>{state === 'in' ? 'All of it is in.' : 'Closed: what had not come is needed again.'}</MutedLine>;
}

function factsOf({ order }: OrderStanding, { records, workshop, display }: BookContext) {
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  const jobs = jobsOf(order.lines).map((id) => records.job.get(id));
  const byClass = classPriceOf(records, order);
  const facts: (readonly [string, string])[] = [
    ['For', jobs.flatMap((job) => (job ? [jobName(job)] : [])).join(', ') || 'the store'],
    ['Placed', paperDay(order.on, display)],
    ['Carriage', order.carriageCoins === 0 ? 'free' : money(order.carriageCoins)],
  ];
  if (order.closedOn !== undefined) facts.push(['Closed', paperDay(order.closedOn, display)]);
  if (byClass !== undefined) {
    const over = ownPriceOf(records, order) - byClass;
    facts.push([
      'Plants',
      `${money(ownPriceOf(records, order))}, quoted by class ${money(byClass)}: ${sayOver(over, money)}`,
    ]);
  }
  return facts;
}

function sayOver(coins: number, money: (coins: number) => string): string {
  if (coins === 0) return 'the same';
  return coins > 0 ? `${money(coins)} over` : `${money(-coins)} less`;
}

function Lines({ standing, context, asked }: Omit<OrderParts, 'api'>) {
  const { workshop, display, records } = context;
  const money = (coins: number) => showCoins(coins, workshop);
  const count = (packs: number) => writeNumber(packs, Number.isInteger(packs) ? 0 : 2, display);
  return (
    <Table
      label="Lines of the order"
      rows={standing.lines}
      keyOf={({ line }) => line.n}
      menu={({ line }) => lineMenu(line, { standing, asked, records })}
      columns={[
        {
          head: 'Line',
          names: true,
          cell: ({ line, cameOn }) => (
            <>
              <Link href={writeRoute('store', line.of)}>{line.label}</Link>{' '}
              <Muted small>
                {sayLine(line, workshop)}
                {cameOn === undefined ? '' : `, in on ${paperDay(cameOn, display)}`}
              </Muted>
            </>
          ),
        },
        { head: `Asked, ${workshop.currency}`, figure: true, cell: ({ line }) => money(line.count * line.askedCoins) },
        { head: 'Came', figure: true, cell: ({ came, line }) => (came > 0 ? `${count(came)} of ${line.count}` : '') },
        { head: `Paid, ${workshop.currency}`, figure: true, cell: (each) => <Paid standing={each} money={money} /> },
      ]}
    />
  );
}

interface LineMenuParts extends Pick<OrderParts, 'standing' | 'asked'> {
  readonly records: BookContext['records'];
}

/** What can be done with a line: taken in with its order, its goods, the jobs that it is for. */
function lineMenu(line: LineStanding['line'], { standing, asked, records }: LineMenuParts): EntryMenu {
  const { id } = standing.order;
  return {
    label: line.label,
    acts: [
      ...(isOpenOrder(standing)
        ? [{ says: `${actNames.receive} …`, run: () => (asked.value = { is: 'receive', order: id }) }, 'line' as const]
        : []),
      goTo('Its lots in the Store', 'store', line.of),
      ...goToBook(line.of, records),
      ...jobsOf([line]).map((job) => goTo(`Job ${job}`, 'jobs', job)),
    ],
  };
}

interface PaidParts {
  readonly standing: LineStanding;
  readonly money: (coins: number) => string;
}

/** What was paid for what came, and how much over the price asked that is. */
function Paid({ standing: { line, came, paidCoins }, money }: PaidParts) {
  if (came === 0) return null;
  const over = paidCoins - Math.round(came * line.askedCoins);
  return (
    <>
      {money(paidCoins)}
      {over !== 0 && (
        <>
          <br />
          <Muted small>{over > 0 ? `${money(over)} over` : `${money(-over)} less`}</Muted>
        </>
      )}
    </>
  );
}

function OrderButtons({ standing, api, asked }: Omit<OrderParts, 'context'>) {
  const { id } = standing.order;
  return (
    <>
      <Buttons>
        {isOpenOrder(standing) && (
          <>
            <Button look="main" onClick={() => (asked.value = { is: 'receive', order: id })}>
              {actNames.receive}
            </Button>
            <Button onClick={() => void api.doAct('closeOrder', { order: id })}>The rest is not coming</Button>
          </>
        )}
        <Link look="act" href={writeRoute('orders', id, 'paper')}>
          {actNames.onPaper}
        </Link>
      </Buttons>
      {!isOpenOrder(standing) && standing.state === 'closed' && (
        <Buttons>
          <Button onClick={() => (asked.value = { is: 'receive', order: id })}>{actNames.receive}</Button>
        </Buttons>
      )}
    </>
  );
}
