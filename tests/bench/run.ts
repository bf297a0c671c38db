import { textTable } from '#electron/cli/text-table.ts';
import { benchBook } from './book.ts';
import { benchBuying } from './buying.ts';
import { benchCommandLine } from './command-line.ts';
import { benchEngine } from './engine.ts';

const told = [...benchEngine(), ...benchBuying(), ...benchBook(), ...benchCommandLine()];
const rows = told.map(({ what, took, floor, ratio, must }) => [what, took, floor, ratio, must]);
process.stdout.write(`${textTable(['what', 'took', 'beside', 'ratio', 'must reach'], rows, [1, 3])}\n`);
