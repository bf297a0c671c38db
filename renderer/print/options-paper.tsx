import type { SizeOption } from '#shared-calc/papers/options-page.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { paperDay, paperFigure, paperMoney } from '#shared-calc/papers/paper-words.ts';
import { DrawnSizes, type DrawnSize } from './size-drawings.tsx';

export interface OptionsPaperParts {
  readonly title: string;
  readonly client: string;
  readonly recipe: string;
  /** The day whose prices these are. */
  readonly on: string;
  readonly letterhead: readonly string[];
  readonly options: readonly SizeOption[];
  readonly drawings: readonly DrawnSize[];
  readonly display: Display;
}

/** More columns than this do not stand side by side on a page. */
const ABREAST = 4;

/** Several sizes for one client to choose from: the same recipe, side by side. */
export function OptionsPaper(parts: OptionsPaperParts) {
  const { title, client, recipe, on, letterhead, options, drawings, display } = parts;
  const rows: SizeOption[][] = [];
  for (let at = 0; at < options.length; at += ABREAST) rows.push(options.slice(at, at + ABREAST));
  return (
    <Paper label="Sizes to choose from" foot={`Sizes to choose from, ${title}`}>
      <Letterhead title="Sizes to choose from" who={letterhead} />
      <section class="brief">
        <Facts
          facts={[
            ['For', client],
            ['What', title],
            ['Built as', recipe],
            ['Prices of', paperDay(on)],
          ]}
        />
      </section>
      <p>
        Each size is priced as if it were chosen alone, tax included. The earliest handover counts from a deposit that
        comes in today. This page is no quote: the size that is chosen is quoted for itself.
      </p>
      <DrawnSizes sizes={drawings} />
      {rows.map((some) => (
        <OptionsTable key={some[0]?.size} options={some} display={display} />
      ))}
    </Paper>
  );
}

interface TableParts {
  readonly options: readonly SizeOption[];
  readonly display: Display;
}

function OptionsTable({ options, display }: TableParts) {
  return (
    <table class="paper-lines options together">
      <thead>
        <tr>
          <td />
          {options.map(({ size, called, tank, builds }) => (
            <th key={size} scope="col">
              {builds === 1 ? called : `${builds} of ${called}`}
              <small>{tank}</small>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {optionRows(display).map(({ label, look, say }) => (
          <tr key={label} class={look}>
            <th scope="row">{label}</th>
            {options.map((option) => (
              <td key={option.size}>{say(option)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface OptionRow {
  readonly label: string;
  readonly look?: string;
  readonly say: (option: SizeOption) => string;
}

const unknown = 'not known yet';

/** What a client chooses by. */
function optionRows(display: Display): readonly OptionRow[] {
  const money = (text: string | undefined) => (text === undefined ? unknown : paperMoney(text, display));
  /** Beside what it is for, where the workshop has what is paid. */
  const cost = (text: string | undefined) =>
    text === undefined ? '' : `, ${paperMoney(text, display)}\u00a0${display.currency}`;
  const figure = (value: number | undefined, unit: string) =>
    value === undefined ? unknown : `${paperFigure(value, 1, display)}\u00a0${unit}`.trimEnd();
  return [
    { label: `Price, ${display.currency}`, look: 'price', say: ({ price }) => money(price) },
    { label: 'Deposit with the order', say: ({ deposit }) => money(deposit) },
    {
      label: 'Earliest handover',
      say: ({ readyOn, because }) => (readyOn === undefined ? unknown : `${paperDay(readyOn)}${waits(because)}`),
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
