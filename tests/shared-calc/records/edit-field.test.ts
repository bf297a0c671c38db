import { describe, expect, test } from 'vitest';
import { editField } from '#shared-calc/records/edit-field.ts';
import type { Material, Rate } from '#shared-calc/records/records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const workshop = workshopOf(records);
const context = { records, workshop, display: displayOf(workshop) };

function sourceAfter(kind: 'rate' | 'material', id: string, [key, text]: readonly [string, string]) {
  const record = records[kind].get(id);
  if (!record) throw new Error(`no ${kind} ${id}`);
  const edited =
    kind === 'rate'
      ? editField({ kind, record: record as Rate, key, text }, context)
      : editField({ kind, record: record as Material, key, text }, context);
  return edited.ok ? edited.value.source : edited.fault;
}

describe('editField', () => {
  test.each([
    ['another amount of a rate', 'rate', 'R-builder', ['coins', '39.00'], undefined],
    ['the same amount', 'rate', 'R-builder', ['coins', '32.00'], 'house'],
    ['another name for a rate', 'rate', 'R-builder', ['label', 'Master builder'], 'house'],
    ['another note of a material', 'material', 'M16', ['note', '200 g to the m2'], undefined],
    ['another supplier of a material', 'material', 'M16', ['supplier', ''], 'memory'],
    ['a source chosen for it', 'material', 'M16', ['source', 'from the supplier'], 'supplier'],
  ] as const)('%s: its figures are from %s', (...[, kind, id, edit, from]) => {
    expect(sourceAfter(kind, id, edit)).toBe(from);
  });
});
