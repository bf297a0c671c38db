import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type Signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { packChoices, suppliersByHand, type ChosenPacks } from '#shared-calc/jobs/pack-choices.ts';
import { jobsToBuy, type JobsRun } from '#shared-calc/derive/jobs-run.ts';
import { isToBuy } from '#shared-calc/buy/no-supplier.ts';
import { placementOf } from '#shared-calc/derive/placement.ts';
import { orderBy } from '#shared-calc/papers/order-days.ts';
import { supplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import { saySeason } from '#shared-calc/words/say-left-out.ts';
import { LackNote } from '#renderer/kit/lack-note.tsx';
import { guessesAsMissing } from '#shared-calc/buy/missing.ts';
import { NoSupplierBlock } from './no-supplier.tsx';
import { PlaceDialog } from './place-dialog.tsx';
import { runCsv } from '#shared-calc/papers/run-csv.ts';
import { runCautions } from '#shared-calc/prepare/order-cautions.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { soldBy } from '#shared-calc/buy/price-book.ts';
import { chosenRun, withCount } from '#shared-calc/buy/chosen-packs.ts';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import { orderView } from './order-view.tsx';
import { PackPanel } from './pack-panel.tsx';
import { plantsOf } from './plants-of.ts';
import { RunJobs, buyableJobs } from './run-jobs.tsx';
import type { ShownRun } from './shown-run.ts';
import { Standing } from '#renderer/kit/standing.tsx';
import { sayRunStock } from '#shared-calc/papers/say-run-stock.ts';
import { RunSums } from './run-sums.tsx';
import { RunNeeds } from './run-needs.tsx';
import { SupplierBlock, type SupplierActs } from './supplier-block.tsx';
import css from './run.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

interface RunState {
  readonly api: JobApi;
  /** Jobs selected or deselected by hand. */
  readonly turned: Signal<ReadonlyMap<string, boolean>>;
  /** Whether it is asked which orders to place. */
  readonly asked: Signal<boolean>;
}

/** One shopping run over jobs; `#/run/M01` shows the packs of a material, `#/run/order/S-hollin` a supplier's order. */
export function runPlace(api: JobApi): (route: Route) => PlaceView {
  const state: RunState = { api, turned: signal(new Map()), asked: signal(false) };
  return ({ rest: [what, supplier] }) => {
    const context = contextNow(api);
    const jobs = chosenJobs(state, context);
    const facts = context.run({ jobs, from: suppliersByHand(context.records, jobs) });
    const shown = facts.ok && jobs.length > 0 ? shownRun(facts.value, { jobs, context }) : undefined;
    const order = what === 'order' ? orderNamed(shown, supplier) : undefined;
    if (order) return order;
    const fault = facts.ok ? '' : sayJobFault(facts.fault);
    return {
      about: '',
      aside: jobs.length === 1 ? 'one job' : `${jobs.length} jobs`,
      acts: runActs(state, shown),
      work: (
        <ScrollPage label="Shopping run">
          <RunJobs context={context} chosen={jobs} turn={(job) => turnJob(state, job, jobs)} />
          {shown ? <Run shown={shown} state={state} material={what} /> : <NoRun fault={fault} />}
          <AskedOrders shown={shown} state={state} />
        </ScrollPage>
      ),
      ...(shown && { sidePanel: <RunPanel shown={shown} state={state} material={what} /> }),
    };
  };
}

function AskedOrders({ shown, state: { api, asked } }: Pick<RunParts, 'state'> & { shown: ShownRun | undefined }) {
  if (!shown || !asked.value) return null;
  return <PlaceDialog shown={shown} api={api} close={() => (asked.value = false)} />;
}

function orderNamed(shown: ShownRun | undefined, supplier: string | undefined): PlaceView | undefined {
  const order = shown?.orders.find((each) => each.supplier === supplier);
  return shown && order ? orderView(shown, order) : undefined;
}

function NoRun({ fault }: { readonly fault: string }) {
  if (fault !== '') return <Fault>{fault}</Fault>;
  return <EmptyNote>Choose jobs, and their needs are bought together.</EmptyNote>;
}

function chosenJobs({ turned }: RunState, context: BookContext): readonly string[] {
  const due = new Set(jobsToBuy(context));
  return buyableJobs(context.records)
    .map(({ id }) => id)
    .filter((id) => turned.value.get(id) ?? due.has(id));
}

function turnJob({ turned }: RunState, job: string, chosen: readonly string[]): void {
  turned.value = new Map(turned.peek()).set(job, !chosen.includes(job));
}

function shownRun(facts: JobsRun, { jobs, context }: Pick<ShownRun, 'jobs' | 'context'>): ShownRun | undefined {
  const { records, prices, today: on } = context;
  const run = chosenRun(facts.run, packChoices(records, jobs), prices);
  const placement = placementOf(context, jobs);
  if (!placement.ok) return undefined;
  const planned = facts.planned();
  const orders = placement.value.drafts.map(({ supplier, lines, carriageCoins, groups, note }) =>
    supplierOrder(
      { supplier: supplier.id, on, lines: [...lines], carriageCoins, note },
      records,
      orderBy(groups, planned),
    ),
  );
  return { jobs, facts, run, placement: placement.value, orders, context };
}

function runActs(state: RunState, shown: ShownRun | undefined): readonly PlaceAct[] {
  const none = 'Choose a job first.';
  if (!shown)
    return [
      { label: actNames.saveCsv, hint: none },
      { label: actNames.placeOrders, main: true, hint: none },
    ];
  const { run, context, placement } = shown;
  const count = placement.drafts.length;
  return [
    {
      label: actNames.saveCsv,
      run: () => downloadCsv(`shopping run ${context.today}`, runCsv(run, context.workshop)),
    },
    count === 0
      ? { label: actNames.placeOrders, main: true, hint: 'Nothing is to be ordered from a supplier.' }
      : {
          label: count === 1 ? 'Place 1 order' : `Place ${count} orders`,
          main: true,
          hint: 'Asks which, and says what is left out',
          run: () => (state.asked.value = true),
        },
  ];
}

interface RunParts {
  readonly shown: ShownRun;
  readonly state: RunState;
  readonly material: string | undefined;
}

function Run({ shown, state, material }: RunParts) {
  const { run, facts, orders, context, jobs } = shown;
  const orderByOf = (supplier: string) => orders.find((each) => each.supplier === supplier)?.orderBy;
  const acts: SupplierActs = {
    take: ({ material: of, pack }) => {
      const need = run.materials.find((each) => each.material === of);
      const had = need?.packs.find(({ id }) => id === pack.id)?.count ?? 0;
      if (need) choose(state, jobs, { material: of, counts: withCount(need, { id: pack.id, count: had + 1 }) });
    },
    csv: (supplier) => {
      const order = orders.find((each) => each.supplier === supplier);
      if (order) downloadCsv(`order ${order.name} ${context.today}`, orderCsv(order, context.workshop));
    },
  };
  const nothing = run.materials.filter(
    (need) => !isToBuy(need) && !need.lacks && !run.suppliers.some(({ supplier }) => supplier === need.supplier),
  );
  return (
    <>
      <LackNote missing={[...run.missing, ...guessesAsMissing(run.guesses)]} jobs={jobs} records={context.records} />
      <NoPriceBlock run={run} material={material} context={context} />
      <NoSupplierBlock run={run} context={context} api={state.api} />
      <SeasonNotes placement={shown.placement} context={context} />
      <RunSums run={run} best={facts.run} jobs={jobs.length} context={context} />
      <StockNotes run={run} context={context} />
      {run.suppliers.map((bill) => {
        const needs = run.materials.filter(({ supplier, lacks }) => supplier === bill.supplier && !lacks);
        return (
          <SupplierBlock
            key={bill.supplier}
            bill={bill}
            needs={needs}
            orderBy={orderByOf(bill.supplier)}
            chosen={material}
            context={context}
            acts={acts}
          />
        );
      })}
      <CautionList cautions={runCautions(facts.benches, run)} display={context.display} />
      {nothing.length > 0 && (
        <section class={css['supplier']}>
          <h2>Nothing to order</h2>
          <RunNeeds label="Nothing to order" needs={nothing} chosen={material} context={context} />
        </section>
      )}
    </>
  );
}

interface NoPriceParts {
  readonly run: ShownRun['run'];
  readonly material: string | undefined;
  readonly context: BookContext;
}

/** Goods to buy of which no price is known: they are in no sum and on no order. */
function NoPriceBlock({ run, material, context }: NoPriceParts) {
  const needs = run.materials.filter(({ lacks }) => lacks);
  if (needs.length === 0) return null;
  return (
    <section class={css['supplier']}>
      <h2>No price yet</h2>
      <RunNeeds label="No price yet" needs={needs} chosen={material} context={context} />
    </section>
  );
}

/** What is kept over a need, and what is bought for the store. */
function StockNotes({ run, context }: Pick<ShownRun, 'run' | 'context'>) {
  return (
    <>
      {sayRunStock(run, context.display).map((says) => (
        <Standing key={says} state="offer">
          <span>{says}</span>
        </Standing>
      ))}
    </>
  );
}

/** Goods of the run that are not to be had now: they stand in its sums, and on no order. */
function SeasonNotes({ placement, context }: Pick<ShownRun, 'placement' | 'context'>) {
  return (
    <>
      {placement.outOfSeason.map((each) => (
        <Standing key={each.material} state="watch" sign="wait">
          <span>{saySeason(each, context)}</span>
        </Standing>
      ))}
    </>
  );
}

function RunPanel({ shown: { run, facts, context, jobs }, state, material }: RunParts) {
  const need = run.materials.find((each) => each.material === material);
  return (
    <PackPanel
      need={need}
      packs={(need && soldBy(context.prices, need)?.packs) ?? []}
      plants={need && plantsOf(need.material, facts.plants(), context.records)}
      context={context}
      put={(of, id, count) => choose(state, jobs, { material: of.material, counts: withCount(of, { id, count }) })}
      take={(of, supplier) => choose(state, jobs, { material: of, counts: undefined, supplier })}
      takenByHand={need !== undefined && suppliersByHand(context.records, jobs).has(need.material)}
      back={(of) => choose(state, jobs, { material: of, counts: undefined })}
    />
  );
}

/** A choice is saved with the run over these jobs, and is undone like any edit. */
function choose({ api }: RunState, jobs: readonly string[], chosen: Omit<ChosenPacks, 'jobs'>): string | undefined {
  const counts = chosen.counts ? Object.fromEntries(chosen.counts) : null;
  const { material, supplier } = chosen;
  return api.doAct('choosePacks', { jobs: [...jobs], material, counts, ...(supplier !== undefined && { supplier }) });
}
