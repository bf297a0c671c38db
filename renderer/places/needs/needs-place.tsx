import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { contextNow, type BookContext, type BookApi } from '#renderer/books/book-api.ts';
import { ChoiceField } from '#renderer/kit/field.tsx';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { needsCautions } from '#shared-calc/prepare/order-cautions.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { memo } from '#shared-calc/records/memo.ts';
import type { WorkedBench } from '#renderer/store/worked-bench.ts';
import { Caution } from '#renderer/kit/caution.tsx';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { LackNote } from '#renderer/kit/lack-note.tsx';
import { guessesAsMissing } from '#shared-calc/buy/missing.ts';
import { sumLabel } from '#shared-calc/papers/quote-part.ts';
import { jobSupply } from '#shared-calc/derive/job-supply.ts';
import type { Supply } from '#shared-calc/buy/material-need.ts';
import { needsCsv } from '#shared-calc/papers/needs-csv.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { NeedsTable } from './needs-table.tsx';
import { needsView, type NeedsView } from './needs-view.ts';
import css from './needs.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

/** The part of the size bench that the needs list reads. */
export interface LaidNeeds {
  readonly id: string;
  readonly job: string | undefined;
  readonly worked: Pick<WorkedBench, 'version' | 'source' | 'bench' | 'isBehind'>;
}

export interface NeedsApi extends BookApi {
  readonly opened: ReadonlySignal<LaidNeeds | undefined>;
  /** Opens a job on the bench; without an id, the open one or the first. */
  readonly open: (id: string | undefined) => void;
}

/** The needs of the job on the bench: what each size uses, what the Store has, and what to buy; `#/needs/J01`. */
export function needsPlace(api: NeedsApi): (route: Route) => PlaceView {
  const fromStore = signal(true);
  const turn = () => (fromStore.value = !fromStore.value);
  const needsMemo = memo<Result<NeedsView, string>>();
  return ({ rest: [asked] }) => {
    const context = contextNow(api);
    const opened = api.opened.value;
    if (!opened || (asked !== undefined && asked !== opened.id)) queueMicrotask(() => api.open(asked));
    if (!opened) return emptyPlace('', <Nothing />);
    const { worked, job } = opened;
    const { version } = worked;
    const source = worked.source();
    const { title, columns, pricing } = source;
    if (columns.length === 0) return emptyPlace(title, <Nothing />);
    const from = [version.value, worked, columns, pricing, fromStore.value, ...storeOn(context, job)];
    if (worked.isBehind()) return emptyPlace(title, <EmptyNote>Working</EmptyNote>);
    const needs = needsMemo(from, () => {
      const supply = fromStore.value ? supplyOf(context, job) : undefined;
      const view = needsView({ bench: worked.bench(), columns, pricing, supply, margins: context.records.margin });
      return view.ok ? view : failed(sayOrderFault(view.fault, calledByLines(source)));
    });
    return {
      about: title,
      aside: columns.length === 1 ? 'one size' : `${columns.length} sizes together`,
      acts: [csvAct(needs, title, context)],
      work: (
        <ScrollPage class={css['needsPage']} role="group" label="Needs list">
          <Choices job={job} context={context} api={api} fromStore={fromStore.value} turn={turn} />
          {needs.ok ? (
            <>
              <LackNote
                missing={lacksOf(needs.value.list)}
                jobs={job === undefined ? [] : [job]}
                records={context.records}
              />
              <NeedsTable view={needs.value} columns={columns} basis={pricing.basis} {...context} />
              <Suppliers view={needs.value} context={context} />
              <CautionList cautions={needsCautions(worked.bench())} display={context.display} />
            </>
          ) : (
            <Refused says={needs.fault} />
          )}
        </ScrollPage>
      ),
    };
  };
}

function emptyPlace(about: string, says: ComponentChildren): PlaceView {
  return { about, aside: '', acts: [], work: <ScrollPage>{says}</ScrollPage> };
}

/** What a list rests on beside its bench. */
function storeOn({ records, today, job: jobOf }: BookContext, job: string | undefined): readonly unknown[] {
  return [records.move, records.order, records.tub, records.margin, today, jobOf(job ?? '')];
}

function supplyOf(context: BookContext, job: string | undefined): (material: string) => Supply {
  const { records, today: on } = context;
  return jobSupply(records, { job, on, useOn: context.job(job ?? '')?.useOn ?? (() => on) });
}

function csvAct(needs: Result<NeedsView, string>, title: string, { workshop }: BookContext): PlaceView['acts'][number] {
  const label = actNames.saveCsv;
  if (!needs.ok) return { label, hint: needs.fault };
  return { label, main: true, run: () => downloadCsv(`needs, ${title}`, needsCsv(needs.value.list, workshop)) };
}

function Nothing() {
  return (
    <EmptyNote>
      No size stands on the bench.{' '}
      <Link look="act" href={writeRoute('bench')}>
        {actNames.takeSize}
      </Link>{' '}
      and its needs are listed here.
    </EmptyNote>
  );
}

function lacksOf({ missing, guesses }: NeedsView['list']) {
  return [...missing, ...guessesAsMissing(guesses)];
}

function Refused({ says }: { readonly says: string }) {
  return (
    <Caution role="status">
      {says}{' '}
      <Link look="act" href={writeRoute('bench')}>
        Go to the size bench
      </Link>
    </Caution>
  );
}

interface ChoicesParts {
  readonly job: string | undefined;
  readonly context: BookContext;
  readonly api: BookApi;
  readonly fromStore: boolean;
  readonly turn: () => void;
}

/** How the job is costed, and whether the Store counts. */
function Choices({ job: id, context: { records }, api, fromStore, turn }: ChoicesParts) {
  const job = id === undefined ? undefined : records.job.get(id);
  const setBasis = (basis: Job['basis']) => job && api.doAct('writeJob', { job: job.id, fields: { basis } });
  return (
    <div class={css['needsChoices']}>
      {job && (
        <ChoiceField
          label="Cost of materials"
          value={job.basis}
          options={[
            { value: 'used', label: 'used: only what goes in' },
            { value: 'packs', label: 'packs: every pack bought' },
          ]}
          choose={(basis) => setBasis(basis === 'packs' ? 'packs' : 'used')}
        />
      )}
      <Checkbox label="take from the store first" on={fromStore} turn={turn} />
    </div>
  );
}

function Suppliers({
  view: { list },
  context: { workshop },
}: {
  readonly view: NeedsView;
  readonly context: BookContext;
}) {
  if (list.suppliers.length === 0) return null;
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <section class={css['needsSuppliers']}>
      <h2>Were it bought alone</h2>
      <Table
        look="ledger"
        class={css['needsTable']}
        label="Were it bought alone"
        rows={list.suppliers}
        keyOf={({ supplier }) => supplier}
        columns={[
          { head: 'Supplier', names: true, cell: ({ supplier, name }) => (name === '' ? supplier : name) },
          { head: `Goods, ${workshop.currency}`, figure: true, cell: ({ goodsCoins }) => money(goodsCoins) },
          { head: `Carriage, ${workshop.currency}`, figure: true, cell: ({ carriageCoins }) => money(carriageCoins) },
          {
            head: `Short of minimum, ${workshop.currency}`,
            figure: true,
            cell: ({ shortOfMinimumCoins: short }) => (short > 0 ? money(short) : ''),
          },
        ]}
        foot={[{ cells: [sumLabel('Packs and carriage', list), { span: 2, says: money(list.landedCoins) }, ''] }]}
      />
    </section>
  );
}
