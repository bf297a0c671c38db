import { useLayoutEffect, useRef } from 'preact/hooks';
import css from './offer-list.module.css';

export interface Offer {
  /** What stands first: a code, a name, a word. */
  readonly insert: string;
  /** In words, beside it. */
  readonly label: string;
  readonly figure?: string;
}

interface OfferListParts<O extends Offer> {
  /** Id of the field; the list's and each offer's id is derived from it. */
  readonly id: string;
  readonly offers: readonly O[];
  readonly active: number;
  readonly take: (offer: O) => void;
  /** Lies over the page, under the field or above it; otherwise it stands in the page. */
  readonly over?: boolean;
}

/** What fits in a field as it is written: each with its code or name, words and figure. The field keeps the focus. */
export function OfferList<O extends Offer>({ id, offers, active, take, over = false }: OfferListParts<O>) {
  const list = useRef<HTMLUListElement>(null);
  useLayoutEffect(() => (over ? layUnder(list.current) : undefined), [offers, over]);
  useLayoutEffect(
    () => list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' }),
    [active, offers],
  );
  return (
    <ul
      ref={list}
      id={`${id}-list`}
      class={css['offers']}
      role="listbox"
      aria-label="What fits here"
      popover={over ? 'manual' : undefined}
      onMouseDown={(event) => event.preventDefault()}
    >
      {offers.map((offer, index) => (
        <li
          key={`${index} ${offer.insert}`}
          id={`${id}-${index}`}
          role="option"
          aria-selected={index === active}
          onMouseDown={() => take(offer)}
        >
          <code>{offer.insert}</code>
          <span class={css['label']}>{offer.label}</span>
          {offer.figure !== undefined && <span class={css['figure']}>{offer.figure}</span>}
        </li>
      ))}
    </ul>
  );
}

/** Least width of a list over the page, px. */
const LEAST = 280;

/** Above all else, under its field, or above it where there is more room; follows the field when the page scrolls. */
function layUnder(list: HTMLElement | null): (() => void) | undefined {
  const field = list?.parentElement;
  if (!list || !field) return undefined;
  list.togglePopover(true);
  const place = () => {
    const { left, top, bottom, width } = field.getBoundingClientRect();
    const wide = Math.min(Math.max(width, LEAST), window.innerWidth);
    const isAbove = bottom + list.offsetHeight > window.innerHeight && top > window.innerHeight - bottom;
    list.style.minWidth = `${wide}px`;
    list.style.left = `${Math.max(0, Math.min(left, window.innerWidth - wide))}px`;
    list.style.top = `${isAbove ? Math.max(0, top - list.offsetHeight) : bottom}px`;
  };
  place();
  const stop = new AbortController();
  window.addEventListener('scroll', place, { capture: true, signal: stop.signal });
  window.addEventListener('resize', place, { signal: stop.signal });
  return () => stop.abort();
}
