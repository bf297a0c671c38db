import type { PaperBlock } from '#shared-calc/papers/document.ts';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';
import { Table } from '#renderer/kit/table.tsx';
import { BoxToTick, TickList } from './box-to-tick.tsx';
import { CautionList } from './caution-list.tsx';
import { PaintedTable } from './painted-table.tsx';
import { PaintedFacts } from './painted-facts.tsx';
import { SignHere } from './paper.tsx';
import { toWrite, writeTable } from './to-write.ts';
import css from './painted-paper.module.css';

interface BlocksParts {
  readonly blocks: readonly PaperBlock[];
  /** What they are about, for screen readers. */
  readonly label: string;
}

export function PaperBlocks({ blocks, label }: BlocksParts) {
  const labels = blocks.filter((block) => block.is === 'label');
  return (
    <>
      {blocks.map((block, at) => {
        const next = blocks[at + 1];
        const isSummed = next?.is === 'facts' && next.look === 'sums';
        return <Block key={at} block={block} label={label} isSummed={isSummed} />;
      })}
      {labels.length > 0 && (
        <div class={css['labels']}>
          {labels.map(({ text, items: [name = '', ...rest] }) => (
            <section key={text}>
              <h3>
                {name} <span>{text}</span>
              </h3>
              {rest.map((line) => (
                <p key={line}>{sayOnPaper(line)}</p>
              ))}
            </section>
          ))}
        </div>
      )}
    </>
  );
}

interface BlockParts {
  readonly block: PaperBlock;
  readonly label: string;
  /** Sums follow. */
  readonly isSummed: boolean;
}

function Block({ block, label, isSummed }: BlockParts) {
  switch (block.is) {
    case 'text':
      return <p>{sayOnPaper(block.text)}</p>;
    case 'list':
      return <List block={block} label={label} />;
    case 'facts':
      return <PaintedFacts {...block} />;
    case 'table':
      return <PaintedTable table={block} label={label} isSummed={isSummed} />;
    case 'days':
      return <Days {...block} />;
    case 'cautions':
      return <CautionList cautions={block.rows} bare={block.bare === true} brief={block.brief === true} />;
    case 'sign':
      return <SignHere lines={block.items} />;
    default:
      return null;
  }
}

interface ListParts {
  readonly block: PaperBlock & { readonly is: 'list' };
  readonly label: string;
}

function List({ block: { items, tick, write, short }, label }: ListParts) {
  if (write !== undefined)
    return (
      <Table
        look="paper"
        class={writeTable}
        label={label}
        quietHeads
        rows={items}
        keyOf={(item) => item}
        columns={[{ head: 'what', names: true, cell: (item) => item }, toWrite(write)]}
      />
    );
  const rows = items.map((item) => (
    <li key={item}>
      {tick && <BoxToTick />} {sayOnPaper(item)}
    </li>
  ));
  return tick ? <TickList>{rows}</TickList> : <ul class={short ? css['short'] : undefined}>{rows}</ul>;
}

function Days({ text, items }: PaperBlock & { readonly is: 'days' }) {
  return (
    <div class={css['round']}>
      <p>
        <b>{text}</b>
      </p>
      <p class={css['days']}>
        {items.map((day) => (
          <span key={day}>
            <BoxToTick /> {day}
          </span>
        ))}
      </p>
    </div>
  );
}
