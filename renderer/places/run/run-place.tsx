import { signal, type Signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { AgainstDialog } from '#renderer/kit/against-dialog.tsx';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { againstAct } from '#renderer/store/against-act.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import { packChoices, suppliersByHand, type ChosenPacks } from '#shared-calc/jobs/pack-choices.ts';
import { jobsToBuy, type JobsRun } from '#shared-calc/derive/jobs-run.ts';
import { runCsv } from '#shared-calc/papers/run-csv.ts';
import { supplierOrders } from '#shared-calc/papers/supplier-orders.ts';
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
  /** What stands against ordering for jobs, while that is asked. */
  readonly asked: Signal<AskedOrder | undefined>;
}

interface AskedOrder {
  readonly jobs: readonly string[];
  readonly against: readonly Against[];
}

/** One shopping run over jobs; `#/run/M01` shows the packs of a material, `#/run/order/S-hollin` a supplier's order. */
export function runPlace(api: JobApi): (route: Route) => PlaceView {
  const state: RunState = { api, turned: signal(new Map()), asked: signal(undefined) };
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
          <RunJobs records={context.records} chosen={jobs} turn={(job) => turnJob(state, job, jobs)} />
          {shown ? <Run shown={shown} state={state} material={what} /> : <NoRun fault={fault} />}
          <AskedOrderDialog state={state} context={context} />
        </ScrollPage>
      ),
      ...(shown && { sidePanel: <RunPanel shown={shown} state={state} material={what} /> }),
    };
  };
}

function orderNamed(shown: ShownRun | undefined, supplier: string | undefined): PlaceView | undefined {
  const order = shown?.orders.find((each) => each.supplier === supplier);
  return shown && order ? orderView(shown, order) : undefined;
}

function NoRun({ fault }: { readonly fault: string }) {
  if (fault !== '') return <Fault>{fault}</Fault>;
  return <EmptyNote>Choose jobs, and their needs are bought together.</EmptyNote>;
}

function chosenJobs({ turned }: RunState, { records }: BookContext): readonly string[] {
  const due = new Set(jobsToBuy(records));
  return buyableJobs(records)
    .map(({ id }) => id)
    .filter((id) => turned.value.get(id) ?? due.has(id));
}

function turnJob({ turned }: RunState, job: string, chosen: readonly string[]): void {
  turned.value = new Map(turned.peek()).set(job, !chosen.includes(job));
}

function shownRun(facts: JobsRun, { jobs, context }: Pick<ShownRun, 'jobs' | 'context'>): ShownRun {
  const run = chosenRun(facts.run, packChoices(context.records, jobs), context.prices);
  const [panes, plants, planned] = [facts.panes(), facts.plants(), facts.planned()];
  const ordered = { run, on: context.today, calendar: context.calendar, panes, plants, planned };
  return { jobs, facts, run, orders: supplierOrders(ordered, context.records), context };
}

function runActs(state: RunState, shown: ShownRun | undefined): readonly PlaceAct[] {
  const none = 'Choose a job first.';
  if (!shown)
    return [
      { label: 'Take out as CSV', hint: none },
      { label: 'Mark as ordered', main: true, hint: none },
    ];
  const { run, jobs, context } = shown;
  const order = () => {
    const against = againstAct(state.api.derived.peek(), 'markOrdered', { jobs: [...jobs] });
    if (against.length > 0) state.asked.value = { jobs, against };
    else markOrdered(state, jobs);
  };
  return [
    {
      label: 'Take out as CSV',
      run: () => downloadCsv(`shopping run ${context.today}`, runCsv(run, context.workshop)),
    },
    { label: 'Mark as ordered', main: true, hint: 'Moves the chosen jobs on to ordered', run: order },
  ];
}

function markOrdered({ api }: RunState, jobs: readonly string[], reason: Reason = {}): string | undefined {
  const refused = api.doAct('markOrdered', { jobs: [...jobs], ...reason });
  if (refused === undefined) api.say(`${jobs.join(', ')} ordered. What comes in is received in the Store.`);
  return refused;
}

function AskedOrderDialog({ state, context }: { readonly state: RunState; readonly context: BookContext }) {
  const { asked } = state;
  if (!asked.value) return null;
  const { jobs, against } = asked.value;
  return (
    <AgainstDialog
      title={`${jobs.join(', ')}: ordered`}
      does="They are ordered"
      against={against}
      act={(reason) => markOrdered(state, jobs, reason)}
      close={() => (asked.value = undefined)}
      context={context}
    />
  );
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
  const nobody = run.materials.filter(({ supplier }) => !run.suppliers.some((bill) => bill.supplier === supplier));
  return (
    <>
      <RunSums run={run} best={facts.run} jobs={jobs.length} context={context} />
      {sayRunStock(run, context.display).map((says) => (
        <Standing key={says} state="offer">
          <span>{says}</span>
        </Standing>
      ))}
      {run.suppliers.map((bill) => {
        const needs = run.materials.filter(({ supplier }) => supplier === bill.supplier);
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
      <CautionList cautions={runCautions(facts.benches, run)} />
      {nobody.length > 0 && (
        <section class={css['supplier']}>
          <h2>Nothing to order</h2>
          <RunNeeds label="Nothing to order" needs={nobody} chosen={material} context={context} />
        </section>
      )}
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
