import { firstBook } from './0001-first-book.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [firstBook];
