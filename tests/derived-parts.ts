import fc from 'fast-check';
import { expect } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { derive, type Derived, type DerivedJob } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import { failingChecks } from '#shared-calc/derive/failing-checks.ts';
import { boardByDay, boardByState } from '#shared-calc/derive/job-board.ts';
import { jobNeeds } from '#shared-calc/derive/job-needs.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import { jobTook } from '#shared-calc/derive/job-took.ts';
import { kindDemands } from '#shared-calc/derive/kind-demands.ts';
import { touchesNow } from '#shared-calc/derive/price-touch.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** Every part of a derivation as plain data. */
function partsOf(derived: Derived) {
  return { jobs: jobPartsOf(derived), ...workshopPartsOf(derived) };
}

function workshopPartsOf(derived: Derived) {
  const items = dueOf(derived);
  const run = derived.run({ jobs: [...derived.records.job.keys()] });
  return {
    run: run.ok
      ? [run.value.run, run.value.unpaid, [...run.value.takes], run.value.plants(), run.value.planned()]
      : run,
    boards: [boardByState({ ...derived, items }), boardByDay({ ...derived, items })],
    demands: [...derived.records.cultureKind.values()].map((kind) => {
      const { demands, unknown } = kindDemands(derived, kind);
      return [demands, unknown.map(({ job, fault }) => [job.job.id, fault])];
    }),
    items,
    touches: touchesNow(derived),
  };
}

function jobPartsOf(derived: Derived) {
  return [...derived.records.job.keys()].flatMap((id) => {
    const job = derived.job(id);
    return job ? [partsOfJob(derived, job)] : [];
  });
}

function partsOfJob(derived: Derived, job: DerivedJob) {
  return {
    id: job.job.id,
    sheet: job.sheet,
    boxes: job.keys.flatMap((key) => job.bench.input().lines.map(({ name }) => job.bench.box(key, name))),
    pricing: job.pricing,
    needs: job.needs(),
    sums: job.sums(),
    each: job.keys.map((key) => job.sums([key])),
    checks: job.keys.map((key) => job.checks(key)),
    uses: entriesOf(job.uses()),
    plan: planOf(job.plan()),
    draft: draftQuote(derived, job),
    stocked: jobNeeds(derived, job),
    failing: failingChecks(derived, job),
    took: jobTook(derived, job),
  };
}

/** As an array, because a map is empty as JSON. */
function entriesOf<V>(worked: Result<ReadonlyMap<string, V>, unknown>) {
  return worked.ok ? [...worked.value] : worked;
}

function planOf(worked: Result<JobPlan, unknown>) {
  return worked.ok ? { ...worked.value, minutes: [...worked.value.minutes] } : worked;
}

type Edit = (records: Records, pick: number) => Records;

/** The records with one record of a kind rewritten. */
function rewritten<K extends keyof Records>(kind: K, write: (record: never, pick: number) => object): Edit {
  return (records, pick) => {
    const table = new Map<string, unknown>(records[kind]);
    const ids = [...table.keys()];
    const id = ids[pick % ids.length];
    if (id === undefined) return records;
    table.set(id, { ...(table.get(id) as object), ...write(table.get(id) as never, pick) });
    return { ...records, [kind]: table };
  };
}

function removed(kind: keyof Records): Edit {
  return (records, pick) => {
    const table = new Map<string, unknown>(records[kind]);
    const ids = [...table.keys()];
    table.delete(ids[pick % Math.max(1, ids.length)] ?? '');
    return { ...records, [kind]: table };
  };
}

const writtenOver: Edit = (records, pick) => {
  const sizes = [...records.size.values()];
  const size = sizes[pick % Math.max(1, sizes.length)];
  if (!size) return records;
  const [line, text] = (
    [
      ['litter', '20 mm'],
      ['drain_gap', '15 mm'],
      ['kit', 'basic'],
      ['litter', ''],
    ] as const
  )[pick % 4] ?? ['litter', ''];
  const whole = pick % 3 === 0;
  const id = `LV-${whole ? size.job : size.id}-${line}`;
  const value = { id, job: size.job, ...(!whole && { size: size.id }), line, text, note: '', by: 'us' as const };
  return { ...records, localValue: new Map(records.localValue).set(id, value) };
};

const edits: readonly Edit[] = [
  writtenOver,
  writtenOver,
  removed('localValue'),
  removed('size'),
  removed('tank'),
  rewritten('packPrice', ({ priceCoins }: { priceCoins: number }, pick) => ({ priceCoins: priceCoins + (pick % 90) })),
  rewritten('packPrice', (_, pick) => ({ from: addDays(DEMO_DAY, (pick % 60) - 30) })),
  rewritten('pack', ({ amount }: { amount: number }, pick) => ({ amount: amount + (pick % 3) })),
  rewritten('size', (_, pick) => ({ count: 1 + (pick % 3) })),
  rewritten('size', (_, pick) => ({ order: pick % 5 })),
  rewritten('line', ({ text, role }: { text: string; role: string }, pick) => ({
    text: role === 'given' ? (pick % 2 ? '' : '1') : text,
  })),
  rewritten('job', (_, pick) => ({ basis: pick % 2 ? 'used' : 'packs' })),
  rewritten('job', (_, pick) => ({ handover: addDays(DEMO_DAY, 30 + (pick % 90)) })),
  rewritten('rate', ({ perHourCoins }: { perHourCoins: number }, pick) => ({
    perHourCoins: perHourCoins + (pick % 10),
  })),
  rewritten('margin', (_, pick) => ({ share: (pick % 50) / 100 })),
  rewritten('taxClass', (_, pick) => ({ share: (pick % 25) / 100 })),
  rewritten('supplier', (_, pick) => ({ leadDays: pick % 20 })),
  rewritten('material', (_, pick) => ({ label: `material ${pick}` })),
  rewritten('move', ({ amount }: { amount: number }, pick) => ({ amount: amount + (pick % 3) })),
  rewritten('workshop', (_, pick) => ({ oldPriceDays: 30 + (pick % 400), decimalComma: pick % 2 === 0 })),
  removed('closedDay'),
];

/** After any sequence of changes an updated derivation equals a fresh one, part by part. */
export function updatedEqualsFresh(runs: number): void {
  const start = libraryJob();
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(edits.length - 1), fc.nat(10_000), fc.nat(3)), { minLength: 1, maxLength: 6 }),
      (steps) => {
        let derived = derive(start, DEMO_DAY);
        partsOf(derived);
        for (const [which, pick, days] of steps) {
          const records = edits[which]?.(derived.records, pick) ?? derived.records;
          derived = derived.update(records, days === 3 ? addDays(derived.today, pick % 40) : derived.today);
          const fresh = derive(structuredClone(records), derived.today);
          expect(JSON.stringify(partsOf(derived))).toBe(JSON.stringify(partsOf(fresh)));
        }
      },
    ),
    { numRuns: runs },
  );
}
