import { hasSupplier, isToBuy } from '#shared-calc/buy/no-supplier.ts';
import { classesOf } from '#shared-calc/buy/class-price.ts';
import type { RunMaterial } from '#shared-calc/buy/shopping-run.ts';
import { draftsOf, placementOf, suppliedLines, type OrderDraft } from '#shared-calc/derive/placement.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import { orderedCautions } from '#shared-calc/prepare/ordered-cautions.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { datedJob } from './dated-job.ts';
import { cautionsBlock, paragraph, sheet, type PaperBlock, type PaperDocument } from './document.ts';
import { plantsOf } from './needs-paper.ts';
import { ordersCsv } from './order-csv.ts';
import { orderBy, type PlannedJob } from './order-days.ts';
import { displayFor, titleOf, type MakePaper, type PaperFault, type PaperInput } from './paper-input.ts';
import { paperDay, paperMoney, paperWeekday } from './paper-words.ts';
import { runOf } from './run-of.ts';
import { jobsOf, supplierOrder, type SupplierOrder } from './supplier-orders.ts';

/** One order of the book as it was placed; those of a job, with what is not ordered yet; or what sizes would need. */
export const orderPaper: MakePaper = (input) => {
  const { records, order } = input;
  const orders = order ? ok([supplierOrder(order, records)]) : ordersOf(input);
  if (!orders.ok) return orders;
  const display = displayFor(input);
  return ok({
    data: orders.value,
    document: {
      title: order ? `Order ${order.id}` : `Orders, ${titleOf(input)}`,
      blocks: [
        ...orders.value.flatMap((each) => {
          const { title, blocks } = orderDocument(each, display);
          return [sheet(title), ...blocks];
        }),
        ...comingIn(
          records,
          orders.value.map(({ rows }) => ({ lines: rows.map(({ material: of }) => ({ of })) })),
        ),
      ],
    },
    csv: ordersCsv(orders.value, workshopOf(records)),
  });
};

function ordersOf(input: PaperInput): Result<readonly SupplierOrder[], PaperFault> {
  const { records, wish } = input;
  const { job } = input.sheet;
  const drafts = job ? jobDrafts(input, job.id) : sizesDrafts(input);
  if (!drafts.ok) return drafts;
  const placed = [...records.order.values()].filter(({ lines }) => jobsOf(lines).includes(job?.id ?? ''));
  const planned = plannedOf(input);
  const open = drafts.value.map(({ supplier, lines, carriageCoins, groups, note }) =>
    supplierOrder(
      { supplier: supplier.id, lines: [...lines], carriageCoins, on: wish.on, note },
      records,
      orderBy(groups, planned),
    ),
  );
  return ok([...placed.map((order) => supplierOrder(order, records)), ...open]);
}

function jobDrafts({ derived }: PaperInput, job: string): Result<readonly OrderDraft[], PaperFault> {
  const placement = placementOf(derived, [job]);
  return placement.ok ? ok(placement.value.drafts) : failed({ kind: 'job', fault: placement.fault });
}

function sizesDrafts(input: PaperInput): Result<readonly OrderDraft[], PaperFault> {
  const run = runOf(input);
  if (!run.ok) return run;
  const { derived, pricing } = input;
  const toBuy = run.value.materials.filter((need) => isToBuy(need) && hasSupplier(need, pricing.prices));
  return ok(
    draftsOf(
      derived,
      toBuy.flatMap((need) => sizesLines(input, need)),
    ),
  );
}

function sizesLines(input: PaperInput, need: RunMaterial): ReturnType<typeof suppliedLines> {
  const classes = classesOf(input.records, need.material);
  const plants = plantsOf(input).filter((each) => classes.has(each.class));
  return suppliedLines(need, input.pricing.prices, {
    parts: [{ job: '', amount: need.toBuy }],
    panes: paneCuts(input.bench).map((cut) => ({ ...cut, job: '' })),
    species: plants.flatMap(({ species }) => species.map((each) => ({ ...each, job: '' }))),
    alternates: plants.flatMap(({ alternates }) => alternates),
  });
}

/** A sheet that stays here: what to mind when what is ordered comes in. */
export function comingIn(
  records: Parameters<typeof orderedCautions>[0],
  orders: Parameters<typeof orderedCautions>[1],
): readonly PaperBlock[] {
  const cautions = orderedCautions(records, orders);
  return cautions.length === 0 ? [] : [sheet('For us: when these goods come in'), cautionsBlock(cautions)];
}

/** An order to one supplier, ready to send. */
export function orderDocument(order: SupplierOrder, display: Display): PaperDocument {
  const day = (date = '') => (date === '' ? '' : paperWeekday(date, display));
  const money = (text: string) => (text === '' ? '' : paperMoney(text, display));
  const main = `Landed, ${display.currency}`;
  return {
    title: `Order to ${order.name}`,
    blocks: [
      {
        is: 'facts',
        rows: [
          ['Order', order.order],
          ['Date', paperDay(order.on, display)],
          ['For our jobs', order.jobs],
          ['Expected', day(order.arrivesOn)],
          ['Order by', day(order.orderBy?.day)],
        ],
      },
      {
        is: 'table',
        head: ['material', 'please send', `cost, ${display.currency}`],
        rows: order.rows.map(({ label, what, cost }) => [label, what, money(cost)]),
        right: [2],
      },
      {
        is: 'facts',
        look: 'sums',
        main,
        rows: [
          ['Goods', money(order.goods)],
          ['Carriage', money(order.carriage)],
          [main, money(order.landed)],
          ['Short of your least order', money(order.shortOfMinimum)],
        ],
      },
      ...order.note.split('\n').flatMap((text) => (text === '' ? [] : [paragraph(text)])),
    ],
  };
}

/** Only a wanted handover sets a day. */
function plannedOf(input: PaperInput): readonly PlannedJob[] {
  if (input.wish.handover === undefined) return [];
  const dated = datedJob(input);
  return dated.ok ? [{ job: input.sheet.job?.id ?? '', plan: dated.value.plan }] : [];
}
