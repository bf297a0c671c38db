import type { Records, Supplier } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { measureField, wordsField } from './import-field.ts';
import { importRecords, type ImportField, type RecordImport } from './import-records.ts';
import { readMoney } from './read-money.ts';
import { readWeekdays } from './read-weekdays.ts';

/**
 * Reads a list of suppliers: rows of supplier (a code), name, lead in working days. Besides: sells, tank lead,
 * carriage, free from, minimum, days, note.
 */
export function importSuppliers(text: string, records: Records): RecordImport {
  return importRecords(text, {
    kind: 'supplier',
    many: 'suppliers',
    code: 'supplier',
    find: (code) => records.supplier.get(code),
    needed: ['name', 'lead'],
    blank: (code) => ({ id: code, name: '', sells: '', leadDays: 0, carriageCoins: 0, note: '' }),
    fields: supplierFields(records),
    lacks: ({ name }) => (name === '' ? 'the name is empty.' : undefined),
  });
}

function supplierFields(records: Records): readonly ImportField<Supplier>[] {
  const workshop = workshopOf(records);
  const money = (heading: string, key: 'carriageCoins' | 'freeFromCoins' | 'minimumCoins'): ImportField<Supplier> => ({
    heading,
    put: (supplier, text) => {
      const read = readMoney(text, workshop);
      return read.ok ? ok({ ...supplier, [key]: read.value }) : failed(`${heading}: ${read.fault}`);
    },
  });
  const days = (heading: string, key: 'leadDays' | 'tankLeadDays', name: string) =>
    measureField<Supplier>(
      heading,
      key,
      { name, stored: 'each', low: 0, high: 365, whole: true },
      workshop.decimalComma,
    );
  return [
    wordsField<Supplier>('name', 'name'),
    wordsField<Supplier>('sells', 'sells'),
    days('lead', 'leadDays', 'Lead'),
    days('tank lead', 'tankLeadDays', 'Tank lead'),
    money('carriage', 'carriageCoins'),
    money('free from', 'freeFromCoins'),
    money('minimum', 'minimumCoins'),
    {
      heading: 'days',
      put: (supplier, text) => {
        const read = readWeekdays(text);
        return read.ok ? ok({ ...supplier, deliveryWeekdays: [...read.value] }) : failed(read.fault);
      },
    },
    wordsField<Supplier>('note', 'note'),
  ];
}
