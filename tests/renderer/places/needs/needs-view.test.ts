import { describe, expect, test } from 'vitest';
import { needsView } from '#renderer/places/needs/needs-view.ts';
import { jobSupply } from '#shared-calc/derive/job-supply.ts';
import type { Buying } from '#shared-calc/buy/needs.ts';
import { workedJob } from '#tests/worked-job.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const demo = demoRecords();

function view(records: Records, supply?: Buying['supply']) {
  const job = records.job.get('J01');
  if (!job) throw new Error('no job');
  const { sheet, bench, pricing } = workedJob(records, job, demoDay);
  const needs = needsView({ bench, columns: sheet.columns, pricing, supply, margins: records.margin });
  return needs;
}

describe('needsView', () => {
  test('what the sizes take adds up to what the job uses, material by material', () => {
    const needs = view(demo);
    const rows = needs.ok ? needs.value.groups.flatMap((group) => group.rows) : [];
    const off = rows.filter(
      ({ need, bySize }) => Math.abs([...bySize.values()].reduce((sum, each) => sum + each, 0) - need.used) > 1e-9,
    );
    expect([rows.length > 20, off]).toEqual([true, []]);
  });

  test('groups stand in the order of the quote', () => {
    const needs = view(demo);
    const order = [...demo.margin.values()].toSorted((a, b) => a.order - b.order).map(({ label }) => label);
    const groups = needs.ok ? needs.value.groups.map(({ label }) => label) : [];
    expect(groups).toEqual(order.filter((label) => groups.includes(label)));
  });

  test('the store gives what it has before anything is bought', () => {
    const supply = jobSupply(demo, { job: 'J01', on: demoDay, useOn: () => demoDay });
    const clay = (needs: ReturnType<typeof view>) =>
      needs.ok && needs.value.list.needs.find(({ material }) => material === 'M01');
    const [without, withStore] = [clay(view(demo)), clay(view(demo, supply))];
    expect([
      without && without.onHand,
      withStore && withStore.onHand,
      withStore && without && withStore.used === without.used,
    ]).toEqual([0, 7, true]);
  });

  test('missing prices are named, all at once, and stop nothing else', () => {
    const [whole, none] = [view(demo), view({ ...demo, packPrice: new Map() })];
    if (!whole.ok || !none.ok) throw new Error('no list');
    const used = ({ list }: typeof whole.value) => list.needs.map((need) => [need.material, need.used]);
    expect(used(none.value)).toEqual(used(whole.value));
    expect(none.value.list.missing.map(({ of }) => of)).toEqual(whole.value.list.needs.map(({ material }) => material));
  });
});
