import type { Output, Refusal } from '#shared-calc/contract/channels.ts';
import { derive, type DerivedJob } from '#shared-calc/derive/derived.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

import type { Session } from './session.ts';
import { refuseBehind } from './refuse.ts';
import type { Work } from './work.ts';

/** Sums of every column of a job, computed by the service from the stored records, column after column. */
export function* confirmBench(session: Session, id: string): Work<Result<Output<'bench.confirm'>, Refusal>> {
  const book = session.book();
  const revision = book.revision();
  const job = derive(book.records(), session.options.today()).job(id);
  if (!job) return refuseBehind(`There is no job ${id}.`);
  const columns: Output<'bench.confirm'>['columns'] = [];
  for (const column of job.keys) {
    columns.push(columnSums(job, column));
    yield undefined;
  }
  return ok({ revision, columns });
}

function columnSums({ sums }: DerivedJob, column: string): Output<'bench.confirm'>['columns'][number] {
  const worked = sums([column]);
  if (!worked.ok) return { column, fault: sayOrderFault(worked.fault) };
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = worked.value.quote;
  return { column, sums: { costCoins, netCoins, grossCoins, depositCoins, hours } };
}
