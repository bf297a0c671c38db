import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { linesOf, pricingOn } from '#shared-calc/jobs/open-sheet.ts';
import type { Job, Line, QuoteLine, Records } from '#shared-calc/records/records.ts';
import { jobColumns, jobWhole, type BenchColumn, type BenchSource } from './bench-source.ts';
import { memo, sameList } from '#shared-calc/derive/memo.ts';

type Written = Pick<BenchSource, 'whole' | 'job'>;
type Priced = Pick<BenchSource, 'pricing' | 'isOldPrice'>;

/** Follows one job through the book; parts of its bench that did not change stay the same objects. */
export function jobSource(): (records: Records, job: Job, today: string) => BenchSource | undefined {
  const keptLines = memo<readonly Line[]>();
  const keptColumns = memo<readonly BenchColumn[]>();
  const keptWhole = memo<Written>();
  const keptOneOffs = memo<readonly QuoteLine[]>();
  const keptPrices = memo<Priced>();
  const keptSource = memo<BenchSource>();
  return (records, job, today) => {
    const recipe = records.recipe.get(job.recipe);
    if (!recipe) return undefined;
    const { line, size, tank, localValue, quoteLine } = records;
    const lines = keptLines([line, job.recipe], (before) => sameList(linesOf(records, job.recipe), before));
    const columns = keptColumns([size, tank, localValue, job.id], (before = []) => jobColumns(records, job, before));
    const whole = keptWhole([localValue, job.id], (before) => jobWhole(records, job, before));
    const oneOffs = keptOneOffs([quoteLine, job.id], (before) => sameList(oneOffsOf(records, job), before));
    const prices = keptPrices([...priceTables(records), oneOffs, job.basis, today], () =>
      pricesOf(pricingOn(records, { job, oneOffs }, today)),
    );
    return keptSource([recipe, job.title, lines, columns, whole, prices], () => ({
      title: job.title,
      recipe,
      lines,
      columns,
      ...whole,
      ...prices,
    }));
  };
}

/** What can be told old of a pricing, by material. */
export function pricesOf(pricing: Pricing): Priced {
  const { goods } = pricing.prices;
  return { pricing, isOldPrice: (material) => goods.get(material)?.packs.some((pack) => pack.old) ?? false };
}

function oneOffsOf(records: Records, job: Job): readonly QuoteLine[] {
  return [...records.quoteLine.values()].filter((line) => line.job === job.id);
}

/** While these are the same, so are the prices. */
export function priceTables(records: Records): readonly unknown[] {
  const { workshop, material, pack, packPrice, supplier, tank, rate, margin, taxClass } = records;
  return [workshop, material, pack, packPrice, supplier, tank, rate, margin, taxClass];
}
