import type { LogFault } from '#shared-calc/prepare/log-rows.ts';

/** Every row of a log that cannot be read, with its reason. */
export function sayLogFaults(rows: readonly LogFault[]): string {
  return rows.map(({ row, says }) => `Row ${row}: ${says}`).join(' ');
}
