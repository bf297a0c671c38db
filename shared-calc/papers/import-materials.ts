import { packId } from '#shared-calc/buy/pack-prices.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import type { Added } from '#shared-calc/records/change.ts';
import { saleWays } from '#shared-calc/fields/material.ts';
import type { Material, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { measureField, ownField, wordsField, yesNoField } from './import-field.ts';
import { findSupplier, importRecords, type ImportField, type RecordImport } from './import-records.ts';
import { readChoice } from './read-choice.ts';
import { readMeasure } from './read-measure.ts';

/**
 * Reads a list of materials: rows of material, label, unit. Besides: packs (`10 L; 45 L`, those it has not yet are
 * made), supplier, sale, keeps, lead, note. Prices come by the price list.
 */
export function importMaterials(text: string, records: Records): RecordImport {
  const decimalComma = workshopOf(records).decimalComma;
  return importRecords(text, {
    kind: 'material',
    many: 'materials',
    code: 'material',
    find: (code) => records.material.get(code),
    needed: ['label', 'unit'],
    blank: (code) => ({ id: code, label: '', unit: '', sale: 'packs', keeps: true, note: '' }),
    fields: materialFields(records, decimalComma),
    lacks: (material) => lackOf(material, records),
    along: (material, fields) => newPacks(material, fields['packs'] ?? '', { records, decimalComma }),
  });
}

function materialFields(records: Records, decimalComma: boolean): readonly ImportField<Material>[] {
  const ways = saleWays.map((way) => ({ value: way, label: way }));
  return [
    wordsField<Material>('label', 'label'),
    wordsField<Material>('unit', 'unit'),
    ownField<Material, string>(
      'supplier',
      (text) => findSupplier(text, records),
      (one, supplier) => ({ ...one, supplier }),
    ),
    ownField<Material, string>('sale', (text) => readChoice(text, 'Sale', ways), withSale),
    yesNoField<Material>('keeps', 'keeps'),
    measureField<Material>(
      'lead',
      'leadDays',
      { name: 'Lead', stored: 'each', low: 0, high: 365, whole: true },
      decimalComma,
    ),
    wordsField<Material>('note', 'note'),
    { heading: 'packs', put: (material) => ok(material) },
  ];
}

function withSale(material: Material, word: string): Material {
  const sale = saleWays.find((each) => each === word);
  return sale === undefined ? material : { ...material, sale };
}

function lackOf(material: Material, records: Records): string | undefined {
  if (records.tank.has(material.id)) return 'that is the code of a tank.';
  if (material.label === '') return 'the label is empty.';
  if (!findUnit(material.unit)) return `there is no unit called "${material.unit}".`;
  const before = records.material.get(material.id);
  if (!before || before.unit === material.unit) return undefined;
  return `it is kept in ${before.unit}; its packs and its stock would no longer be right in ${material.unit}.`;
}

interface PackReading {
  readonly records: Records;
  readonly decimalComma: boolean;
}

function newPacks(
  material: Material,
  text: string,
  { records, decimalComma }: PackReading,
): Result<readonly Added[], string> {
  const had = [...records.pack.values()].filter((pack) => pack.material === material.id).map(({ amount }) => amount);
  const amounts = new Set<number>();
  for (const part of text.split(/[;|]/).filter((each) => each.trim() !== '')) {
    const measure = { name: 'Pack', stored: material.unit, low: 1e-6 };
    const read = readMeasure(part, measure, { decimalComma });
    if (!read.ok) return failed(read.fault);
    if (read.value !== undefined && !had.includes(read.value)) amounts.add(read.value);
  }
  return ok(
    [...amounts].map((amount) => ({
      kind: 'pack',
      record: { id: packId(material.id, amount), material: material.id, amount },
    })),
  );
}
