import { commandLineBundle } from '#electron/cli/bundle.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { pageBundle } from '#electron/host/build-stale.ts';
import { readyToLook } from '#tests/browser/ready-to-look.ts';
import { benchBook } from './book.ts';
import { benchBuying } from './buying.ts';
import { benchCommandLine } from './command-line.ts';
import { benchDerived } from './derived.ts';
import { benchEngine } from './engine.ts';
import { benchPage } from './page.ts';
import { benchPaste } from './paste.ts';
import { benchPlaces } from './places.ts';

await readyToLook([pageBundle, commandLineBundle]);
const measured = [
  ...benchEngine(),
  ...benchBuying(),
  ...benchBook(),
  ...benchPaste(),
  ...benchDerived(),
  ...benchCommandLine(),
  ...(await benchPage()),
  ...(await benchPlaces()),
];
const rows = measured.map(({ what, took, floor, ratio, must }) => [what, took, floor, ratio, must]);
process.stdout.write(`${textTable(['what', 'took', 'beside', 'ratio', 'must reach'], rows, [1, 3])}\n`);
