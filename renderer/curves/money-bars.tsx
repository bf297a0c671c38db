import { useRef } from 'preact/hooks';
import type { MoneyBar, MoneyBarsSpec } from './money-bars-spec.ts';
import { Plate } from './plate.tsx';
import { useWidth } from './use-width.ts';
import css from './money-bars.module.css';

const ROW = 40;
const BAR = 16;

/** Where the money goes: a bar a group, the dearest first, cost dark and margin pale. */
export function MoneyBars({ spec: { title, under, label, bars, table } }: { readonly spec: MoneyBarsSpec }) {
  const host = useRef<HTMLDivElement>(null);
  const width = useWidth(host, 280);
  return (
    <Plate title={title} under={under} table={table}>
      <div ref={host}>
        <svg class={css['moneyBars']} role="img" aria-label={label} width={width} height={bars.length * ROW + 4}>
          {bars.map((bar, at) => (
            <Bar key={at} bar={bar} top={at * ROW} width={width} isFirst={at === 0} />
          ))}
        </svg>
      </div>
    </Plate>
  );
}

interface BarParts {
  readonly bar: MoneyBar;
  readonly top: number;
  readonly width: number;
  /** The first says which part is which. */
  readonly isFirst: boolean;
}

function Bar({ bar: { name, cost, margin, price }, top, width, isFirst }: BarParts) {
  const room = width - 2;
  const base = top + 32;
  return (
    <g>
      <text x="0" y={top + 13}>
        {name}
      </text>
      <text class={css['fig']} x={width} y={top + 13} text-anchor="end">
        {price}
      </text>
      <rect class={css['cost']} x="1" y={top + 18} width={cost * room} height={BAR} />
      {margin > 0 && <rect class={css['margin']} x={1 + cost * room} y={top + 18} width={margin * room} height={BAR} />}
      {isFirst && cost * room > 40 && (
        <text class={css['onCost']} x="8" y={base - 2}>
          cost
        </text>
      )}
      {isFirst && margin * room > 50 && (
        <text x={8 + cost * room} y={base - 2}>
          margin
        </text>
      )}
    </g>
  );
}
