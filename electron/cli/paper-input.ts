import { houseNow } from '#shared-calc/jobs/working-house.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { PaperInput } from '#shared-calc/papers/paper-input.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { treatmentWays } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { readWish } from './commands/prepare.ts';
import { findIssued } from './find-issued.ts';
import { orderSheet } from './issue-order.ts';
import type { Arguments } from './read-arguments.ts';
import { workOrder } from './work-order.ts';

/** The input of a paper: a computed order, an issued quote, or only the workshop. The caller closes its bench. */
export function readPaperInput(
  ofWorkshop: boolean,
  given: Arguments,
  records: Records,
): Result<PaperInput, readonly string[]> {
  const printed = printedOf(given, records);
  if (!printed.ok) return printed;
  const isPrinted = Object.values(printed.value).some((each) => each !== undefined);
  const order = ofWorkshop || isPrinted ? noOrder(given, records) : anOrder(given, records);
  return order.ok ? ok({ ...order.value, ...printed.value }) : order;
}

/** What is printed as it was: an issued quote, an order that was placed. */
function printedOf(
  given: Arguments,
  records: Records,
): Result<Pick<PaperInput, 'issued' | 'order'>, readonly string[]> {
  const [quote, placed] = [given.text('quote'), given.text('order')];
  const issued = quote === undefined ? ok(undefined) : findIssued(records, quote);
  if (!issued.ok) return failed([issued.fault]);
  const order = records.order.get(placed ?? '');
  if (placed !== undefined && !order) return failed([`No order ${placed} in the book.`]);
  return ok({ issued: issued.value, order });
}

/** The argument of the command is the kind of paper. */
function anOrder(given: Arguments, records: Records): Result<PaperInput, readonly string[]> {
  const worked = workOrder({ ...given, words: [] }, records);
  if (!worked.ok) return worked;
  const { derived, order, bench, pricing, house, place } = worked.value;
  const wish = readWish(given, records.job.get(order.jobId ?? ''), records);
  const sheet = orderSheet(worked.value);
  if (wish.ok && sheet.ok) {
    return ok({
      derived,
      records,
      sheet: sheet.value,
      lines: order.lines,
      bench,
      pricing,
      house,
      place,
      wish: wish.value,
      treatment: readTreatment(given),
    });
  }
  return failed([wish, sheet].flatMap((each) => (each.ok ? [] : [each.fault])));
}

function noOrder(given: Arguments, records: Records): Result<PaperInput, readonly string[]> {
  const wish = readWish(given, undefined, records);
  if (!wish.ok) return failed([wish.fault]);
  const sheet = { recipe: '', columns: [], whole: new Map(), oneOffs: [] };
  const bench = onceBench({ lines: [], columns: [], job: new Map(), isOldPrice: () => false });
  const derived = derive(records, wish.value.on);
  const pricing = { prices: derived.prices, rules: derived.rules, basis: 'used', oneOffs: [] } as const;
  return ok({
    derived,
    records,
    sheet,
    lines: [],
    bench,
    pricing,
    house: houseNow(records, ''),
    place: () => [],
    wish: wish.value,
    treatment: readTreatment(given),
  });
}

function readTreatment(given: Arguments): PaperInput['treatment'] {
  return {
    aim: given.text('aim') === 'sterile' ? 'sterile' : 'clean',
    way: treatmentWays.find((way) => way === given.text('way')),
  };
}
