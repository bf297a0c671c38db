import { houseTables } from './house-tables.ts';
import { jobTables } from './job-tables.ts';
import type { Tables } from './table.ts';

/** How every kind of record stands in the file. */
export const tables: Tables = { ...houseTables, ...jobTables };
