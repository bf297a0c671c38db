import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { CodedName } from '#renderer/kit/coded-name.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import { noSupplier, type NoSupplier } from '#shared-calc/buy/no-supplier.ts';
import type { ChosenRun } from '#shared-calc/buy/chosen-packs.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import css from './run.module.css';

interface NobodyParts {
  readonly run: ChosenRun;
  readonly context: BookContext;
  readonly api: Pick<BookStore, 'doAct'>;
}

/** Goods to buy that nobody is named for: they are on no order until they have a supplier, which each row can give. */
export function NoSupplierBlock({ run, context, api }: NobodyParts) {
  const { records, workshop, display, prices } = context;
  const left = noSupplier(run.materials, prices);
  if (left.length === 0) return null;
  const coins = left.reduce((sum, each) => sum + each.coins, 0);
  const suppliers = [...records.supplier.values()].map(({ id, name }) => ({ value: id, label: name || id }));
  return (
    <section class={css['supplier']}>
      <header>
        <h2 data-state="watch">
          <Sign name="watch" /> No supplier yet
        </h2>
        <p>
          {left.length === 1 ? '1 thing' : `${left.length} things`}, <b>{showCoins(coins, workshop)}</b>{' '}
          {workshop.currency}: left out of every order until named
        </p>
      </header>
      {suppliers.length === 0 && (
        <p>
          No supplier is in the book: <Link href={writeRoute('rate-book', 'suppliers')}>enter the first</Link>.
        </p>
      )}
      <Table
        look="ledger"
        label="No supplier yet"
        rows={left}
        keyOf={({ material }) => material}
        columns={[
          { head: 'Material', names: true, cell: (each) => <CodedName code={each.material} label={each.label} /> },
          { head: 'Buy', figure: true, cell: ({ buy, unit }) => goodsWords(buy, unit, display) },
          {
            head: 'Supplier',
            cell: (each) => (
              <SupplierBox left={each} suppliers={suppliers} choose={(id) => nameSupplier(api, context, each, id)} />
            ),
          },
          { head: 'Cost', figure: true, cell: (each) => showCoins(each.coins, workshop) },
        ]}
      />
    </section>
  );
}

interface BoxParts {
  readonly left: NoSupplier;
  readonly suppliers: readonly { readonly value: string; readonly label: string }[];
  readonly choose: (supplier: string) => void;
}

function SupplierBox({ left, suppliers, choose }: BoxParts) {
  if (suppliers.length === 0) return <Muted>none in the book</Muted>;
  return (
    <PickOne
      label={`Supplier of ${left.material}`}
      quiet
      value=""
      options={[{ value: '', label: 'supplier?' }, ...suppliers]}
      choose={choose}
    />
  );
}

/** Writes whom the material or the tank is usually bought from. */
function nameSupplier(
  api: NobodyParts['api'],
  { records }: BookContext,
  { material }: NoSupplier,
  supplier: string,
): void {
  const tank = records.tank.get(material);
  const goods = records.material.get(material);
  if (supplier === '') return;
  if (tank) api.doAct('put', { kind: 'tank', record: { ...tank, supplier } });
  else if (goods) api.doAct('put', { kind: 'material', record: { ...goods, supplier } });
}
