import { done as doneAct, refused as refusedAct } from './do-act.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { runAct } from '#shared-calc/acts/act.ts';
import { put, remove } from '#shared-calc/acts/book-acts.ts';
import { isEmptyChange } from '#shared-calc/records/change.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const demo = demoRecords();

describe('put and remove', () => {
  const run = (name: 'put' | 'remove', input: unknown, records = demo) =>
    runAct({ put, remove }[name], derive(records, DEMO_DAY), input);
  const refused = (name: 'put' | 'remove', input: unknown, records = demo) => {
    const done = run(name, input, records);
    return done.ok ? 'done' : sayActFault(done.fault);
  };
  const supplier = [...demo.supplier.values()][0];
  const price = [...demo.packPrice.values()][0];

  test('a record is added, replaced, or left as it is', () => {
    const made = run('put', { kind: 'supplier', record: { ...supplier, id: 'S-new' } });
    const changed = run('put', { kind: 'supplier', record: { ...supplier, note: 'cycles before noon' } });
    const same = run('put', { kind: 'supplier', record: supplier });

    expect(made.ok && made.value.added.map(({ record }) => record.id)).toEqual(['S-new']);
    expect(changed.ok && changed.value.updated).toEqual([
      { kind: 'supplier', from: supplier, to: { ...supplier, note: 'cycles before noon' } },
    ]);
    expect(same.ok && isEmptyChange(same.value)).toBe(true);
  });

  test('what names nothing, says the same twice or is issued is refused', () => {
    expect(refused('put', { kind: 'pack', record: { id: 'P', material: 'M99', amount: 1 } })).toBe(
      'Pack P names M99 as its material, which is not in the book.',
    );
    expect(refused('put', { kind: 'packPrice', record: { ...price, id: 'other' } })).toBe(
      `Price other and price ${price?.id} have the same pack and from.`,
    );
    const issued = { id: 'Q', number: 'Q-1', revision: 'A', issuedOn: '2026-01-01', body: '', sha256: '0'.repeat(64) };
    expect(refused('put', { kind: 'issuedQuote', record: issued })).toBe('Issued quote Q stays as it was issued.');
    const days = { id: 'D', from: '2026-12-26', to: '2026-12-24', label: '' };
    expect(refused('put', { kind: 'closedDay', record: days })).toBe('From 2026-12-26 to 2026-12-24 runs backward.');
    const tank = { ...demo.tank.get('T07'), damHeightMm: 700 };
    expect(refused('put', { kind: 'tank', record: tank })).toBe(
      'The dam is 700 mm and the tank only 600 mm high inside.',
    );
    const twin = { ...demo.material.get('M01'), id: 'T07' };
    expect(refused('put', { kind: 'material', record: twin })).toBe('That is the code of a tank.');
    const workshop = { ...demo.workshop.get('workshop'), coinDecimals: 3 };
    expect(refused('put', { kind: 'workshop', record: workshop })).toBe(
      'The currency has 2 decimals, not 3: every amount of the book changes with them. Use rescaleCoins.',
    );
  });

  test('what is used stays, and says by what; what is not goes with what belongs to it', () => {
    expect(refused('remove', { kind: 'supplier', id: 'S-1x' })).toMatch(/^There is no supplier S-1x\./);
    expect(refused('remove', { kind: 'workshop', id: 'workshop' })).toBe(
      'The workshop stays. It is needed for the book: a book has one workshop.',
    );
    expect(refused('remove', { kind: 'material', id: 'M01' })).toMatch(
      /^Material M01 is still used by move K-M01, line H1\.drainage_need/,
    );
    expect(refused('remove', { kind: 'job', id: 'J02' }, libraryJob())).toMatch(/^Job J02 is still used by size /);
    const tank = run('remove', { kind: 'tank', id: 'T01' });
    expect(tank.ok && tank.value.removed.map(({ kind }) => kind)).toEqual(['tank', 'pack', 'packPrice']);
  });
});

describe('putAll and removeAll', () => {
  const [one, other] = [...demo.supplier.values()];
  if (!one || !other) throw new Error('two suppliers are wanted');
  const made = { ...one, id: 'S-new', name: 'New goods' };
  const records = [
    { kind: 'supplier', record: { ...one, note: 'rings first' } },
    { kind: 'supplier', record: made },
  ] as const;

  test('several records are written in one step, under the label that is given', () => {
    const all = doneAct(demo, 'putAll', { records: [...records] });
    expect([all.label, all.records.supplier.get(one.id)?.note, all.records.supplier.get('S-new')]).toEqual([
      '2 records',
      'rings first',
      made,
    ]);
    expect(doneAct(demo, 'putAll', { records: [...records], label: '2 fields' }).label).toBe('2 fields');
    expect(doneAct(demo, 'putAll', { records: [records[0]] }).label).toBe(`note of ${one.id}`);
  });

  test('one that is refused keeps all of them out', () => {
    const wrong = { kind: 'pack', record: { id: 'P', material: 'M99', amount: 1 } } as const;
    expect(refusedAct(demo, 'putAll', { records: [...records, wrong] })).toContain('M99');
  });

  test('several records go together, also where only they name each other', () => {
    const tanks = ['T50', 'T51'].map(
      (id) => ({ id, label: id, shape: 'rectangle', clientsOwn: false, note: '' }) as const,
    );
    const withTanks = doneAct(demo, 'putAll', {
      records: tanks.map((record) => ({ kind: 'tank', record }) as const),
    }).records;
    const names = tanks.map(({ id }) => ({ kind: 'tank', id }) as const);
    const gone = doneAct(withTanks, 'removeAll', { records: names });
    expect([gone.label, gone.records.tank.size]).toEqual(['T50, T51 removed', demo.tank.size]);
    const used = { kind: 'tank', id: 'T07' } as const;
    expect(refusedAct(withTanks, 'removeAll', { records: [...names, used] })).toMatch(/^Tank T07 is still used by/);
  });
});
