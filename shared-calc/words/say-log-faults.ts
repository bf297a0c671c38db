import type { LogFault } from '#shared-calc/prepare/log-rows.ts';

export function sayLogFaults(rows: readonly LogFault[]): string {
  return rows.map(({ row, says }) => `Row ${row}: ${says}`).join(' ');
}
