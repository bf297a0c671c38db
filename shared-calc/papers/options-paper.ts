import { calledOf } from '#shared-calc/recipe/column.ts';
import { everyLine } from '#shared-calc/bench/every-line.ts';
import { clientCautions } from '#shared-calc/jobs/freeze-quote.ts';
import { heading, paragraph, type PaperBlock } from './document.ts';
import { optionsCsv } from './options-csv.ts';
import { optionsPage, type SizeOption } from './options-page.ts';
import { displayFor, jobWords, titleOf, type MakePaper, type PaperInput } from './paper-input.ts';
import { paperDay, paperFigure, paperMoney } from './paper-words.ts';
import { atLeast, partData, sayPart } from './quote-part.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { ok } from '#shared-calc/result.ts';

const optionsIntro =
  'Each size is priced as if it were chosen alone, tax included. The earliest handover counts from a deposit that comes in today. This page is no quote: the size that is chosen is quoted for itself.';

/** Several sizes for one client to choose from, with the same recipe, side by side. */
export const optionsPaper: MakePaper = (input) => {
  const { bench, pricing, records, wish } = input;
  const workshop = workshopOf(records);
  const options = optionsPage({ bench, pricing, records, on: wish.on });
  return ok({
    data: options.map(({ missing, guesses, ...option }) => ({ ...option, ...partData({ missing, guesses }) })),
    document: { title: optionsTitle(input, options), blocks: blocksOf(input, options) },
    csv: optionsCsv(options, workshop),
  });
};

/** No more sizes than this fit beside each other on a page. */
const ABREAST = 4;

function blocksOf(input: PaperInput, options: readonly SizeOption[]): readonly PaperBlock[] {
  const { bench, sheet, wish } = input;
  const rows = optionRows(displayFor(input));
  const starts = options.map((_, at) => at).filter((at) => at % ABREAST === 0);
  return [
    {
      is: 'facts',
      rows: [
        ['For', jobWords(input).client],
        ['Built as', builtAs(input)],
        ['Prices of', paperDay(wish.on, displayFor(input))],
      ],
    },
    paragraph(optionsIntro),
    { is: 'picture' },
    ...starts.map((at): PaperBlock => {
      const some = options.slice(at, at + ABREAST);
      return {
        is: 'table',
        head: ['', ...some.map(optionHead)],
        rows: rows.map(({ label, say }) => [label, ...some.map(say)]),
        main: rows.findIndex(({ look }) => look === 'price'),
      };
    }),
    heading('Cautions, and who decides'),
    { is: 'cautions', rows: clientCautions(everyLine(bench), sheet.job?.survey), bare: true, brief: true },
  ];
}

/** `Humid planted`; where sizes have recipes of their own, each with its sizes: `Humid planted: T03; Dry gecko: T05`. */
function builtAs({ sheet, records }: PaperInput): string {
  const titleFor = (id: string) => records.recipe.get(id)?.title ?? id;
  const sizes = Map.groupBy(sheet.columns, ({ recipe = sheet.recipe }) => recipe);
  const [only = sheet.recipe] = sizes.keys();
  if (sizes.size < 2) return titleFor(only);
  return [...sizes].map(([id, columns]) => `${titleFor(id)}: ${columns.map(calledOf).join(', ')}`).join('; ');
}

/** A page with a price that is not whole, or a guess, is not for the client yet. */
function optionsTitle(input: PaperInput, options: readonly SizeOption[]): string {
  const title = `Sizes to choose from, ${titleOf(input)}`;
  const lacks = sayPart({
    missing: eachOf(options.flatMap(({ missing }) => missing)),
    guesses: eachOf(options.flatMap(({ guesses }) => guesses)),
  });
  return lacks === '' ? title : `${title}, not to be given: ${lacks}`;
}

function eachOf<T extends { readonly of: string; readonly label: string }>(all: readonly T[]): readonly T[] {
  return [...new Map(all.map((each) => [`${each.of} ${each.label}`, each])).values()];
}

function optionHead({ called, builds }: SizeOption): string {
  return builds === 1 ? called : `${builds} of ${called}`;
}

interface OptionRow {
  readonly label: string;
  readonly look?: string;
  readonly say: (option: SizeOption) => string;
}

const unknown = 'not known yet';

/** The rows that a client compares. */
function optionRows(display: Display): readonly OptionRow[] {
  const sum = (option: SizeOption, text: string | undefined) =>
    text === undefined ? unknown : atLeast(paperMoney(text, display), option);
  /** The cost, to follow its quantity, if the workshop has a price for it. */
  const cost = (text: string | undefined) =>
    text === undefined ? '' : `, ${paperMoney(text, display)}\u00a0${display.currency}`;
  const figure = (value: number | undefined, own: string) => {
    if (value === undefined) return unknown;
    const unit = own === '' ? '' : shownUnit(own, display);
    const shown = unit === own ? value : fromBase(toBase(value, unitOf(own)), unitOf(unit));
    return `${paperFigure(shown, 1, display)}\u00a0${unitWords(unit, '')}`.trimEnd();
  };
  return [
    { label: 'Tank', say: ({ tank }) => tank },
    { label: `Price, ${display.currency}`, look: 'price', say: (option) => sum(option, option.price) },
    { label: 'Deposit with the order', say: (option) => sum(option, option.deposit) },
    {
      label: 'Earliest handover',
      say: ({ readyOn, because }) =>
        readyOn === undefined ? unknown : `${paperDay(readyOn, display)}${waits(because)}`,
    },
    { label: 'Weight of one, filled', say: ({ weightKg }) => figure(weightKg, 'kg') },
    { label: 'Plants in one', say: ({ plants }) => figure(plants, '') },
    {
      label: 'Lamps and fan, a month',
      say: ({ kWhPerMonth, powerCostPerMonth }) => `${figure(kWhPerMonth, 'kWh')}${cost(powerCostPerMonth)}`,
    },
    {
      label: 'Water, a month',
      say: ({ waterLPerMonth, waterCostPerMonth }) => `${figure(waterLPerMonth, 'L')}${cost(waterCostPerMonth)}`,
    },
    { label: 'Our visits in the first year', say: ({ careVisits }) => figure(careVisits, '') },
    { label: 'Draining', say: ({ drain }) => (drain === '' ? 'none' : drain) },
    { label: 'Can refilled and cleaned', say: ({ refill }) => (refill === '' ? 'none' : refill) },
  ];
}

function waits(because: string): string {
  return because === '' ? '' : `, after ${because}`;
}
