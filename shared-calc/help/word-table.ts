import { benchWords } from './bench-words.ts';
import { tankWords } from './tank-words.ts';
import { tradeWords } from './trade-words.ts';
import type { Word } from './word.ts';

const table = { ...tankWords, ...benchWords, ...tradeWords };

export type WordId = keyof typeof table;

/** The words of the trade and of the program, explained. */
export const wordTable: Readonly<Record<WordId, Word>> = table;
