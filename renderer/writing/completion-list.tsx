import { useEffect, useRef } from 'preact/hooks';
import type { Completion } from './rule-help.ts';
import css from './completion-list.module.css';

interface Completions {
  /** Id of the field; each offer's id is derived from it. */
  readonly id: string;
  readonly offers: readonly Completion[];
  readonly active: number;
  readonly take: (offer: Completion) => void;
}

/** Names, functions and units that fit at the cursor, with unit and current figure. */
export function CompletionList({ id, offers, active, take }: Completions) {
  const list = useRef<HTMLUListElement>(null);
  useEffect(
    () => list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' }),
    [active],
  );
  return (
    <ul ref={list} id={`${id}-list`} class={css['offers']} role="listbox" aria-label="Names that fit here">
      {offers.map((offer, index) => (
        <li
          key={`${offer.kind} ${offer.insert}`}
          id={`${id}-${index}`}
          role="option"
          aria-selected={index === active}
          onMouseDown={(event) => {
            event.preventDefault();
            take(offer);
          }}
        >
          <code>{offer.insert}</code>
          <span class={css['label']}>{offer.label}</span>
          <span class={css['figure']}>{offer.figure}</span>
        </li>
      ))}
    </ul>
  );
}
