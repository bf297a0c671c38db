import { useState } from 'preact/hooks';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { packsOf, priceOn, sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { goodsLabel, unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { sayPack } from '#shared-calc/buy/pack-said.ts';
import type { Pack } from '#shared-calc/records/records.ts';
import css from './orders.module.css';

interface DialogParts {
  readonly api: JobApi;
  readonly close: () => void;
}

/** An order for the store: packs that a supplier sells, with a count of each. */
export function NewOrderDialog({ api, close }: DialogParts) {
  const context = contextNow(api);
  const sellers = sellersOf(context);
  const [supplier, setSupplier] = useState(sellers[0]?.value ?? '');
  const [counts, setCounts] = useState<ReadonlyMap<string, string>>(new Map());
  const [wrong, setWrong] = useState<string>();
  const place = () => {
    const packs = countsOf(counts);
    const refused = packs ? api.doAct('newOrder', { supplier, packs: [...packs], note: '' }) : 'Write whole numbers.';
    setWrong(refused);
    if (refused !== undefined) return false;
    location.hash = writeRoute('orders', [...api.records.peek().order.keys()].at(-1) ?? '');
    return true;
  };
  const choose = (id: string) => {
    setSupplier(id);
    setCounts(new Map());
  };
  return (
    <AskDialog title="Order for the store" does="Place the order" run={place} wrong={wrong} close={close}>
      {(enter) => (
        <>
          {sellers.length === 0 && <Hint>Nobody sells anything with a price yet: see the material book.</Hint>}
          {sellers.length > 0 && <PickOne label="Supplier" value={supplier} options={sellers} choose={choose} />}
          <DialogScroll class={css['receipt']} label="Packs of the supplier">
            <Fields look="wide">
              {packsFrom(context, supplier).map((pack) => (
                <TextField
                  key={pack.id}
                  label={packLabel(pack, context)}
                  hint={sayPrice(pack, context)}
                  unit="packs"
                  figure
                  text={counts.get(pack.id) ?? ''}
                  typing={(text) => setCounts(new Map(counts).set(pack.id, text))}
                  enter={enter}
                />
              ))}
            </Fields>
          </DialogScroll>
          <Hint>An order is not undone: it is closed, and what has not come is not coming.</Hint>
        </>
      )}
    </AskDialog>
  );
}

function sellersOf(context: BookContext) {
  return [...context.records.supplier.values()]
    .filter(({ id }) => packsFrom(context, id).length > 0)
    .map(({ id, name }) => ({ value: id, label: name || id }));
}

/** What a supplier sells in packs at a price; cut goods are ordered with their sizes, from the run. */
function packsFrom({ records, today }: BookContext, supplier: string): readonly Pack[] {
  const goods = [...records.material.values()].filter(({ sale }) => sale === 'packs').map(({ id }) => id);
  return [...goods, ...records.tank.keys(), ...records.plant.keys()]
    .flatMap((of) => packsOf(records, of))
    .filter((pack) => sellerOf(records, pack) === supplier && priceOn(records, pack.id, today));
}

function packLabel(pack: Pack, { records, display }: BookContext): string {
  const { material } = pack;
  const unit = unitInStore(material, records) ?? 'each';
  return `${material} ${goodsLabel(material, records)}, ${sayPack(pack, unit, display)}`;
}

function sayPrice({ id }: Pack, { records, today, workshop }: BookContext): string {
  return `${showCoins(priceOn(records, id, today)?.priceCoins, workshop)}\u00a0${workshop.currency} each`;
}

/** The packs asked for; nothing if a count cannot be read. */
function countsOf(texts: ReadonlyMap<string, string>) {
  const asked = [...texts].filter(([, text]) => text.trim() !== '' && text.trim() !== '0');
  if (!asked.every(([, text]) => /^\d{1,5}$/.test(text.trim()))) return undefined;
  return asked.map(([pack, text]) => ({ pack, count: Number(text) }));
}
