import type { FlagView, FootBox, FootId, FootRow, FootTotal } from '#renderer/bench/view-model.ts';
import type { KnownSums, OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { showValue, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledByWords, calledLine } from '#shared-calc/words/called-by-words.ts';
import { isTaxMissing, sayEachLack, sayPartShort, type QuotePart } from '#shared-calc/papers/quote-part.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { JobTotals } from './bench-totals.ts';
import { rangedFigure } from './box-view.ts';
import type { ColumnScan, Loud } from './column-scan.ts';
import type { LineFace, LineFaces } from './line-faces.ts';
import type { WorkedBench } from './worked-bench.ts';

const labels: Readonly<Record<FootId, string>> = {
  mass: 'Weight, filled',
  hours: 'Hours',
  cost: 'Cost',
  net: 'Price before tax',
  tax: 'Tax',
  gross: 'Price',
  deposit: 'Deposit',
  flags: 'Flags',
};

const ids: readonly FootId[] = ['hours', 'mass', 'cost', 'net', 'tax', 'gross', 'deposit', 'flags'];

/** The sums under the strips; the weight where a recipe works it. */
export function footRows(faces: LineFaces, totals?: JobTotals): readonly FootRow[] {
  const weight = massFace(faces);
  const units = (id: FootId) => (id === 'flags' ? '' : id === 'hours' ? 'h' : faces.display.currency);
  return ids.flatMap((id): readonly FootRow[] => {
    if (id === 'mass' && !weight) return [];
    const unit = id === 'mass' && weight ? weight.unit : units(id);
    const row = { kind: 'foot', id, label: labels[id], unit } as const;
    return [totals ? { ...row, total: footTotal(id, totals, faces) } : row];
  });
}

function massFace(faces: LineFaces): LineFace | undefined {
  return faces.all.find(({ line }) => line.use === 'filledMass');
}

export interface FootParts {
  readonly worked: WorkedBench;
  readonly faces: LineFaces;
  readonly column: string;
  /** The column's label. */
  readonly called: string;
  readonly scan: ColumnScan;
}

/** One sum in the foot of a column, or the total of its flags. */
export function footBox(id: FootId, parts: FootParts): FootBox {
  const { worked, faces, column, called, scan } = parts;
  if (id === 'flags') return flagsBox(called, scan);
  if (id === 'mass') return massBox(parts);
  const sums = worked.sums(column);
  if (!sums.ok) return withoutSum(id, called, sums.fault, faces);
  if (id === 'tax' && isTaxMissing(sums.value)) return unknownSum(id, called);
  return knownSum(id, sums.value, parts);
}

/** A sum, or as much of it as is known. */
function knownSum(id: FootId, sums: KnownSums, { faces, called, scan }: FootParts): FootBox {
  const whole = isWhole(id, sums);
  const figure = sumFigure(id, sums.quote, faces.display);
  const flags = id === 'cost' ? costFlags(scan, sums) : atLeastFlag(whole);
  const unit = id === 'hours' ? 'hours' : faces.display.currency;
  const said = `${whole ? '' : 'at least '}${figure} ${unit}`;
  const lacks = id === 'cost' ? sayEachLack(sums) : [];
  const spoken = [labels[id], called, said, ...flags.map(({ says }) => says), ...lacks].join(', ');
  const plain = figure.replaceAll(faces.display.decimalComma ? '.' : ',', '');
  return { figure, flags, spoken, copied: whole ? plain : `at least ${plain}` };
}

/** What one build of the size weighs when it is filled. */
function massBox({ worked, faces, column, called }: FootParts): FootBox {
  const face = massFace(faces);
  const box = face && worked.bench().box(column, face.line.name);
  if (!face || typeof box?.value !== 'number') return unknownSum('mass', called);
  const whole = showValue(box.value, face.line.unit, faces.display);
  const figure = rangedFigure(box, faces.display) ?? whole;
  return { figure, flags: [], spoken: `${labels.mass}, ${called}, ${whole} ${face.unit}`, copied: figure };
}

/** What all builds of a job come to together. Work and lines that a job has once count once. */
function footTotal(id: FootId, totals: JobTotals, faces: LineFaces): FootTotal {
  const says = `${labels[id]} of the whole job, ${totals.builds} builds`;
  if (id === 'mass') return { ...massTotal(totals, faces), says };
  const { sums } = totals;
  if (id === 'flags') return lackTotal(sums);
  if (!sums.ok || (id === 'tax' && isTaxMissing(sums.value))) return { ...notKnown, says };
  const once = id === 'hours' ? 'done' : 'done or quoted';
  return {
    figure: sumFigure(id, sums.value.quote, faces.display),
    short: isWhole(id, sums.value) ? '' : 'at least',
    says: `${says}; what is ${once} once a job counts once`,
  };
}

const notKnown = { figure: '', short: 'not known yet' } as const;

function massTotal({ mass }: JobTotals, faces: LineFaces): Pick<FootTotal, 'figure' | 'short'> {
  const face = massFace(faces);
  if (!mass || !face) return notKnown;
  const figure = writeNumber(fromBase(mass.kg, unitOf(face.shown)), 1, faces.display);
  return { figure, short: mass.isPart ? 'at least' : '' };
}

/** How much is missing for a price of the whole job. */
function lackTotal(sums: JobTotals['sums']): FootTotal {
  if (!sums.ok) return { figure: '', short: '', says: '' };
  return { figure: '', short: sayPartShort(sums.value), says: sayEachLack(sums.value).join('; ') };
}

function isWhole(id: FootId, { hoursKnown, missing }: Pick<KnownSums, 'hoursKnown' | 'missing'>): boolean {
  return id === 'hours' ? hoursKnown : missing.length === 0;
}

/** A sum of which not even a part is known. */
function unknownSum(id: FootId, called: string): FootBox {
  const says = 'not known yet';
  return { figure: '', flags: [waiting(says)], spoken: `${labels[id]}, ${called}, ${says}`, copied: '' };
}

/** Old prices, and what the cost waits for. */
function costFlags(scan: ColumnScan, part: QuotePart): readonly FlagView[] {
  const says = sayPartShort(part);
  return [...flagsOf(scan, ['old']), ...(says === '' ? [] : [waiting(says)])];
}

function atLeastFlag(whole: boolean): readonly FlagView[] {
  return whole ? [] : [waiting('at least')];
}

function waiting(says: string): FlagView {
  return { look: 'waiting', sign: 'wait', says };
}

/** A sum of money as text, with thousands separators. */
export function money(coins: number, { moneyDecimals = 2, decimalComma = false }: Display): string {
  return writeNumber(coins / 10 ** moneyDecimals, moneyDecimals, { decimalComma });
}

function sumFigure(id: FootId, quote: QuoteSums, display: Display): string {
  switch (id) {
    case 'hours':
      return writeNumber(quote.hours, 2, display);
    case 'cost':
      return money(quote.costCoins, display);
    case 'net':
      return money(quote.netCoins, display);
    case 'tax':
      return money(quote.grossCoins - quote.netCoins, display);
    case 'gross':
      return money(quote.grossCoins, display);
    case 'deposit':
      return money(quote.depositCoins, display);
    default:
      return '';
  }
}

/** A sum that cannot be worked names its cause: a cell that has no answer, or a share that no price can have. */
function withoutSum(id: FootId, called: string, fault: OrderFault, faces: LineFaces): FootBox {
  const says = sumWaitsOn(fault, faces);
  const sizes = fault.kind === 'no-amount-yet' ? [{ key: fault.box.column, label: called }] : [];
  return {
    figure: '',
    flags: [waiting(says)],
    spoken: `${labels[id]}, ${called}, ${says}. ${sayOrderFault(fault, calledByWords(faces, sizes))}`,
    copied: '',
  };
}

function sumWaitsOn(fault: OrderFault, faces: LineFaces): string {
  if (fault.kind !== 'no-amount-yet') return 'no price';
  const { line, cause } = fault.box;
  const first = cause?.why === 'waits' ? cause.problem.line : line.name;
  return `waits on ${calledLine(faces, first)}`;
}

const flagWords: readonly (readonly [Loud, Omit<FlagView, 'says'>, (count: number) => string])[] = [
  ['stop', { look: 'stop', sign: 'stop' }, (count) => `${count} stop`],
  ['watch', { look: 'watch', sign: 'watch' }, (count) => `${count} watch`],
  ['unsure', { look: 'watch', sign: 'watch' }, (count) => `${count} may not hold`],
  ['unknown', { look: 'needs', sign: 'need' }, (count) => `${count} not known yet`],
  ['advice', { look: 'advice', sign: 'advice' }, (count) => `${count} advice`],
  ['range', { look: 'range', sign: 'range' }, (count) => `${count} out of range`],
  ['needs', { look: 'needs', sign: 'need' }, (count) => (count === 1 ? '1 needs a figure' : `${count} need a figure`)],
  ['loop', { look: 'loop', sign: 'loop' }, (count) => `${count} in a cycle`],
  ['fault', { look: 'range', sign: 'range' }, (count) => `${count} without an answer`],
  ['old', { look: 'old', sign: 'old' }, (count) => (count === 1 ? '1 old price' : `${count} old prices`)],
];

function flagsBox(called: string, scan: ColumnScan): FootBox {
  const flags = flagsOf(scan, ['stop', 'watch', 'unsure', 'unknown', 'advice', 'range', 'needs', 'loop', 'fault']);
  const words = flags.length === 0 ? 'none' : flags.map((flag) => flag.says).join(', ');
  return { figure: '', flags, spoken: `Flags, ${called}, ${words}`, copied: flags.length === 0 ? '' : words };
}

function flagsOf({ counts }: ColumnScan, wanted: readonly Loud[]): readonly FlagView[] {
  return flagWords.flatMap(([loud, flag, says]) => {
    const count = counts.get(loud) ?? 0;
    return count > 0 && wanted.includes(loud) ? [{ ...flag, says: says(count) }] : [];
  });
}
