import type { ComponentChildren } from 'preact';
import type { Column } from '#renderer/kit/table.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import css from './paper.module.css';

/** A checkbox on paper, large enough to tick with wet hands. */
export function BoxToTick() {
  return (
    <span class={css['toTick']} aria-hidden="true">
      <span />
    </span>
  );
}

/** A column of boxes to tick. */
export const tickColumn: Column<unknown> = {
  head: <Unseen>ticked</Unseen>,
  look: css['tickCell'],
  cell: () => <BoxToTick />,
};

/** A list in which each row begins with a box to tick. */
export function TickList({ children }: { readonly children: ComponentChildren }) {
  return <ul class={css['ticked']}>{children}</ul>;
}
