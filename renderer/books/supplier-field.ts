import type { Records } from '#shared-calc/records/records.ts';
import { choiceField } from './choice-field.ts';
import type { Field } from './field.ts';

/** Who it comes from, by name; nobody where left empty. */
export function supplierField<R extends { readonly supplier?: string | undefined }>(records: Records): Field<R> {
  const options = [...records.supplier.values()].map(({ id, name }) => ({ value: id, label: name === '' ? id : name }));
  return choiceField<R>({
    key: 'supplier',
    title: 'Supplier',
    options,
    width: 13,
    mayBeEmpty: true,
    get: ({ supplier }) => supplier,
    put: (record, supplier) => ({ ...record, supplier }),
  });
}
