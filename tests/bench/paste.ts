import { derive } from '#shared-calc/derive/derived.ts';
import { writeBoxes } from '#renderer/books/write-boxes.ts';
import { materialTable } from '#renderer/places/material-book/material-rows.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';
import { measure, ms, ratio, type Told } from './measure.ts';

/** One column pasted into a material book of 400 materials, compared with one of 100. */
export function benchPaste(): readonly Told[] {
  const [few, many] = [pasteInto(100), pasteInto(400)];
  return [
    {
      what: 'paste one column into 400 materials',
      took: ms(many),
      floor: `into 100 ${ms(few)}`,
      ratio: ratio(many / few),
      must: '4 is linear',
    },
  ];
}

function pasteInto(count: number): number {
  const context = derive(withMaterials(demoRecords(), count), demoDay);
  const rows = materialTable.rows(context).slice(0, count);
  return measure({ times: 40, warm: 20 }, (turn) => {
    writeBoxes(
      materialTable,
      context,
      rows.map(({ id }) => ({ row: id, column: 'note', text: `paste ${turn}` })),
    );
  }).median;
}

/** The demo's materials, and copies of them with their packs and prices up to this number. */
function withMaterials(records: Records, count: number): Records {
  const models = [...records.material.values()];
  const copies = Array.from({ length: count - models.length }, (_, at) => ({
    id: `M${1000 + at}`,
    of: models[at % models.length]?.id ?? '',
  }));
  const material = copies.flatMap(({ id, of }) => copied(records.material.get(of), { id }));
  const packs = copies.flatMap(({ id, of }) =>
    [...records.pack.values()]
      .filter((pack) => pack.material === of)
      .map((pack) => ({ of: pack.id, record: { ...pack, id: `${id}-${pack.amount}`, material: id } })),
  );
  const prices = packs.flatMap(({ of, record }) =>
    [...records.packPrice.values()]
      .filter(({ pack }) => pack === of)
      .map((price) => ({ ...price, id: `${record.id}@${price.from}`, pack: record.id })),
  );
  const added = [
    ...material.map((record) => ({ kind: 'material' as const, record })),
    ...packs.map(({ record }) => ({ kind: 'pack' as const, record })),
    ...prices.map((record) => ({ kind: 'packPrice' as const, record })),
  ];
  return applyChange(records, { ...emptyChange('many materials'), added });
}

function copied<T>(record: T | undefined, own: Partial<T>): readonly T[] {
  return record ? [{ ...record, ...own }] : [];
}
