import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { printCards } from './papers/print-cards.ts';
import { servePapers, type ServedPapers } from './papers/served-papers.ts';
import { readyToLook } from './ready-to-look.ts';

/* Every printed page as PDF and as pictures, A4 and Letter, for eyes, in a folder git does not keep. */
const folder = fileURLToPath(new URL('./screens/papers/', import.meta.url));

const papers: readonly (readonly [name: string, place: string])[] = [
  ['quote', 'quotes/Q-0001A'],
  ['quote-of-three', 'quotes/Q-0002A'],
  ['quote-long', 'quotes/Q-0003A'],
  ['quote-draft', 'quotes/J02'],
  ['options-of-seven', 'quotes/options/J04'],
  ['options', 'quotes/options/J03'],
  ['needs', 'jobs/J03/needs'],
  ['pick-list', 'jobs/J03/pick-list'],
  ['bench', 'bench/J03'],
  ['tank-book', 'tank-book'],
  ['order-hollin', 'run/order/S-hollin'],
  ['order-greavel', 'run/order/S-greavel'],
  ['order-marlvale', 'run/order/S-marlvale'],
];

const formats = ['A4', 'Letter'] as const;

async function print(served: ServedPapers, name: string, place: string): Promise<void> {
  const page = await served.open(place);
  // A list is made when the page is printed.
  if (!['bench', 'tank-book'].includes(name)) await page.waitForSelector('article');
  for (const format of formats) {
    const file = `${folder}${name}-${format}`;
    await page.pdf({ path: `${file}.pdf`, format, preferCSSPageSize: false, printBackground: true });
    spawnSync('pdftoppm', ['-r', '80', '-png', `${file}.pdf`, file], { stdio: 'ignore' });
  }
  await page.context().close();
}

mkdirSync(folder, { recursive: true });
await readyToLook([]);
const served = await servePapers();
for (const [name, place] of papers) await print(served, name, place);
const complaints = [...served.complaints(), ...(await printCards(folder))];
await served.close();
process.stdout.write(`${[`Papers are in ${folder}`, ...new Set(complaints)].join('\n')}\n`);
