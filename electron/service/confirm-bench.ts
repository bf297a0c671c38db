import { orderSums } from '#shared-calc/bench/order-sums.ts';
import type { Output, Refusal } from '#shared-calc/contract/channels.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import type { WorkedJob } from '#shared-calc/jobs/worked-job.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

import type { Session } from './session.ts';
import { refuseBehind } from './refuse.ts';

/** Sums of every column of a job, worked here from what is stored. */
export function confirmBench(session: Session, id: string): Result<Output<'bench.confirm'>, Refusal> {
  const book = session.book();
  const records = book.records();
  const job = records.job.get(id);
  if (!job) return refuseBehind(`There is no job ${id}.`);
  const open = openJob(records, job, session.options.today());
  const columns = keysOf(open.sheet).map((column) => columnSums(open, column));
  return ok({ revision: book.revision(), columns });
}

function columnSums({ bench, pricing }: WorkedJob, column: string): Output<'bench.confirm'>['columns'][number] {
  const worked = orderSums(bench, [column], pricing);
  if (!worked.ok) return { column, fault: sayOrderFault(worked.fault) };
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = worked.value.quote;
  return { column, sums: { costCoins, netCoins, grossCoins, depositCoins, hours } };
}
