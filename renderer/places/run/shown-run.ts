import type { BookContext } from '#renderer/books/book-api.ts';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { ChosenRun } from '#shared-calc/buy/chosen-packs.ts';
import type { Placement } from '#shared-calc/derive/placement.ts';
import type { JobsRun } from '#shared-calc/derive/jobs-run.ts';

/** The current run. */
export interface ShownRun {
  readonly jobs: readonly string[];
  readonly facts: JobsRun;
  readonly run: ChosenRun;
  readonly placement: Placement;
  readonly orders: readonly SupplierOrder[];
  readonly context: BookContext;
}
