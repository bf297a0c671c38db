import { Table } from '#renderer/kit/table.tsx';
import type { SizeOption } from '#shared-calc/papers/options-page.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { optionHead, optionRows, optionsIntro, type OptionRow } from '#shared-calc/papers/options-paper.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { DrawnSizes, type DrawnSize } from './size-drawings.tsx';
import css from './options-paper.module.css';
import paper from './paper.module.css';

export interface OptionsPaperParts {
  readonly title: string;
  readonly client: string;
  readonly recipe: string;
  /** The day these prices are valid on. */
  readonly on: string;
  readonly letterhead: readonly string[];
  readonly options: readonly SizeOption[];
  readonly drawings: readonly DrawnSize[];
  readonly display: Display;
}

/** No more columns than this fit on a page. */
const ABREAST = 4;

/** Several sizes of one recipe next to each other, for a client to choose from. */
export function OptionsPaper(parts: OptionsPaperParts) {
  const { title, client, recipe, on, letterhead, options, drawings, display } = parts;
  const rows: SizeOption[][] = [];
  for (let at = 0; at < options.length; at += ABREAST) rows.push(options.slice(at, at + ABREAST));
  return (
    <Paper label="Sizes to choose from" foot={`Sizes to choose from, ${title}`}>
      <Letterhead title="Sizes to choose from" who={letterhead} />
      <Facts
        facts={[
          ['For', client],
          ['What', title],
          ['Built as', recipe],
          ['Prices of', paperDay(on)],
        ]}
      />
      <p>{optionsIntro}</p>
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
    <Table
      look="paper"
      class={`${css['options']} ${paper['together']}`}
      label="Sizes side by side"
      rows={optionRows(display)}
      keyOf={({ label }) => label}
      mark={({ look }) => (look === 'price' ? 'sum' : undefined)}
      columns={[
        { names: true, cell: ({ label }) => label },
        ...options.map((option) => ({
          head: (
            <>
              {optionHead(option)}
              <small>{option.tank}</small>
            </>
          ),
          cell: ({ say }: OptionRow) => say(option),
        })),
      ]}
    />
  );
}
