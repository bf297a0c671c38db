import { useState } from 'preact/hooks';
import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { TextField } from '#renderer/kit/field.tsx';
import { PriceList } from '#renderer/books/price-list.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Hint } from '#renderer/kit/note.tsx';
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

/** A material's packs, each with its past, present and future prices. */
export function MaterialPanel({ row: { id, material, packs }, context, api }: MaterialPanelParts) {
  const sayPack = ({ amount }: Pack) => `${cleanNoise(amount)} ${material.unit}`;
  const remove = (pack: Pack) => api.doAct('remove', { kind: 'pack', id: pack.id });
  return (
    <>
      <PanelHead
        where={material.sale === 'cut' ? 'Material book, cut to size and priced by the unit' : 'Material book'}
        title={material.label === '' ? id : `${id} ${material.label}`}
      />
      {packs.length === 0 && <Hint>No pack yet, so that it cannot be costed. Add the first below.</Hint>}
      {packs.map(({ pack }) => (
        <section key={pack.id}>
          <h3>Pack of {sayPack(pack)}</h3>
          <PriceList pack={pack} of={`${sayPack(pack)} of ${id}`} context={context} api={api} />
          <p>
            <Button look="plain" onClick={() => remove(pack)}>
              Remove this pack
            </Button>
          </p>
        </section>
      ))}
      <section>
        <h3>Another pack</h3>
        <AddPack key={id} material={material} context={context} api={api} />
      </section>
    </>
  );
}

interface AddPackParts {
  readonly material: Material;
  readonly context: BookContext;
  readonly api: BookApi;
}

function AddPack({ material, context, api }: AddPackParts) {
  const [text, setText] = useState('');
  const amount = said(
    readMeasure(text, { name: 'Amount', stored: material.unit, low: 1e-6, mayBeEmpty: true }, context.display),
  );
  const add = () => {
    if (!amount.ok || amount.value === undefined) return;
    api.doAct('newPack', { material: material.id, amount: amount.value }, () => setText(''));
  };
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
      <Buttons>
        <Button disabled={!amount.ok || amount.value === undefined} onClick={add}>
          Add the pack
        </Button>
      </Buttons>
    </>
  );
}
