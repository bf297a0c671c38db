import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { PriceList } from '#renderer/books/price-list.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Material, Pack } from '#shared-calc/records/records.ts';
import type { MaterialRow } from './material-rows.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { PanelHead } from '#renderer/kit/side-panel.tsx';

interface MaterialPanelParts {
  readonly row: MaterialRow;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** A material's packs by supplier, each with its article number and its past, present and future prices. */
export function MaterialPanel({ row: { id, material, packs }, context, api }: MaterialPanelParts) {
  const { records } = context;
  const sold = Map.groupBy(packs, ({ pack }) => sellerOf(records, pack) ?? '');
  const nameOf = (supplier: string) => records.supplier.get(supplier)?.name ?? 'No supplier yet';
  const usual = material.supplier ?? '';
  const sellers = [...sold].toSorted(([one], [other]) => Number(other === usual) - Number(one === usual));
  const priced = sellers[0]?.[0] ?? usual;
  return (
    <>
      <PanelHead
        where={material.sale === 'cut' ? 'Material book, cut to size and priced by the unit' : 'Material book'}
        title={material.label === '' ? id : `${id} ${material.label}`}
      />
      {packs.length === 0 && <Hint>No pack yet, so that it cannot be costed. Add the first below.</Hint>}
      {packs.length > 0 && priced !== usual && (
        <Hint>
          {usual === '' ? 'It has no usual supplier' : `${nameOf(usual)} sells no pack of it here`}: quotes are priced
          by {nameOf(priced)}.
        </Hint>
      )}
      {sellers.map(([supplier, its]) => (
        <Fragment key={supplier}>
          {sellers.length > 1 && (
            <h3>
              {nameOf(supplier)}
              {supplier === usual && ', the usual supplier'}
            </h3>
          )}
          {its.map(({ pack }) => (
            <PackPart
              key={pack.id}
              pack={pack}
              material={material}
              seller={sellers.length > 1 ? nameOf(supplier) : undefined}
              context={context}
              api={api}
            />
          ))}
        </Fragment>
      ))}
      <section>
        <h3>Another pack</h3>
        <AddPack key={id} material={material} context={context} api={api} />
      </section>
    </>
  );
}

interface PackParts {
  readonly pack: Pack;
  readonly material: Material;
  /** Named where several sell it. */
  readonly seller: string | undefined;
  readonly context: BookContext;
  readonly api: BookApi;
}

function PackPart({ pack, material, seller, context, api }: PackParts) {
  const says = `${cleanNoise(pack.amount)} ${material.unit}`;
  const put = (record: Pack) => api.doAct('put', { kind: 'pack', record });
  const of = `${says} of ${material.id}${seller === undefined ? '' : ` from ${seller}`}`;
  return (
    <section>
      <h3>Pack of {says}</h3>
      <PriceList pack={pack} of={of} context={context} api={api} />
      <Fields>
        <FieldEntry kind="pack" record={pack} field="supplier" of={of} context={context} put={put} />
        <FieldEntry kind="pack" record={pack} field="article" of={of} context={context} put={put} />
      </Fields>
      <p>
        <Button look="plain" onClick={() => api.doAct('remove', { kind: 'pack', id: pack.id })}>
          Remove this pack
        </Button>
      </p>
    </section>
  );
}

interface AddPackParts {
  readonly material: Material;
  readonly context: BookContext;
  readonly api: BookApi;
}

function AddPack({ material, context, api }: AddPackParts) {
  const [text, setText] = useState('');
  const [supplier, setSupplier] = useState('');
  const [article, setArticle] = useState('');
  const amount = said(
    readMeasure(text, { name: 'Amount', stored: material.unit, low: 1e-6, mayBeEmpty: true }, context.display),
  );
  const add = () => {
    if (!amount.ok || amount.value === undefined) return;
    const sold = { ...(supplier !== '' && { supplier }), ...(article.trim() !== '' && { article: article.trim() }) };
    api.doAct('newPack', { material: material.id, amount: amount.value, ...sold }, () => {
      setText('');
      setArticle('');
    });
  };
  const suppliers = [...context.records.supplier.values()].map(({ id, name }) => ({ value: id, label: name }));
  return (
    <>
      <TextField
        label={`Amount in a pack of ${material.id}`}
        unit={material.unit}
        figure
        text={text}
        typing={setText}
        enter={add}
        wrong={amount.ok ? undefined : amount.fault}
      />
      <PickOne
        label={headingOf('pack', 'supplier')}
        value={supplier}
        options={[{ value: '', label: 'the usual supplier' }, ...suppliers]}
        choose={setSupplier}
      />
      <TextField label={headingOf('pack', 'article')} text={article} typing={setArticle} enter={add} />
      <Buttons>
        <Button disabled={!amount.ok || amount.value === undefined} onClick={add}>
          Add the pack
        </Button>
      </Buttons>
    </>
  );
}
