import { describe, expect, test } from 'vitest';

import { fromRecordLists, RecordListsSchema, toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { mapKinds, type Records } from '#shared-calc/records/records.ts';
import { readDemo } from '#tests/fixtures/demo/read-demo.ts';

const empty = mapKinds<Records>(() => new Map());
const demo: Records = {
  ...empty,
  tank: new Map(readDemo('tank').map((record) => [record.id, record])),
  supplier: new Map(readDemo('supplier').map((record) => [record.id, record])),
};

describe('toRecordLists', () => {
  test('a book goes over as lists and comes back the same', () => {
    const sent: unknown = JSON.parse(JSON.stringify(toRecordLists(demo)));

    expect(fromRecordLists(RecordListsSchema.parse(sent))).toEqual(demo);
  });
});
