import { commandLineBundle } from '#electron/cli/bundle.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { pageBundle } from '#electron/host/build-stale.ts';
import { readyToLook } from '#tests/browser/ready-to-look.ts';
import { benchBook } from './book.ts';
import { benchBuying } from './buying.ts';
import { benchCommandLine } from './command-line.ts';
import { benchDerived } from './derived.ts';
import { benchEngine } from './engine.ts';
import type { Told } from './measure.ts';
import { benchPage } from './page.ts';
import { benchPaste } from './paste.ts';
import { benchPlaces } from './places.ts';

type Part = () => readonly Told[] | Promise<readonly Told[]>;

const parts: Readonly<Record<string, Part>> = {
  engine: benchEngine,
  buying: benchBuying,
  book: benchBook,
  paste: benchPaste,
  derived: benchDerived,
  'command-line': benchCommandLine,
  page: benchPage,
  places: benchPlaces,
};

await readyToLook([pageBundle, commandLineBundle]);
for (const part of asked(process.argv.slice(2))) await measurePart(part);

/** The parts named on the command line, or all of them. */
function asked(names: readonly string[]): readonly Part[] {
  const unknown = names.find((name) => !Object.hasOwn(parts, name));
  if (unknown !== undefined) {
    throw new Error(`no part ${unknown} of the bench; there are ${Object.keys(parts).join(', ')}`);
  }
  return Object.entries(parts).flatMap(([name, part]) => (names.length === 0 || names.includes(name) ? [part] : []));
}

/** Writes a part as soon as it is measured, so that a run cut short keeps what it has. */
async function measurePart(part: Part): Promise<void> {
  const rows = (await part()).map(({ what, took, floor, ratio, must }) => [what, took, floor, ratio, must]);
  process.stdout.write(`${textTable(['what', 'took', 'beside', 'ratio', 'must reach'], rows, [1, 3])}\n\n`);
}
