import { useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import listLook from '#renderer/writing/completion-list.module.css';
import { Hint } from './note.tsx';
import { Unkept } from './unkept.tsx';
import css from './field.module.css';
import pickLook from './pick-field.module.css';

export interface PickOption {
  readonly value: string;
  /** In words, beside the code. */
  readonly label: string;
}

interface PickParts {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly placeholder?: string;
  readonly options: readonly PickOption[];
  /** Takes one of the options; the field is then empty for the next. */
  readonly pick: (value: string) => void;
}

/** More are found by writing on. */
const MOST = 40;

/** Picks from a list by code or name: arrows walk what fits, Enter takes one, Escape shuts the list. */
export function PickField({ label, hint, placeholder, options, pick }: PickParts) {
  const id = useOwnId();
  const picking = usePicking(options, pick);
  const { text, fitting, active, shown } = picking;
  return (
    <div class={`${css['field']} ${pickLook['pick']}`}>
      <label for={id}>{label}</label>
      <span class={css['well']}>
        <input
          id={id}
          role="combobox"
          aria-expanded={shown}
          aria-controls={`${id}-list`}
          aria-autocomplete="list"
          aria-activedescendant={shown ? `${id}-${active}` : undefined}
          value={text}
          placeholder={placeholder}
          autocomplete="off"
          spellcheck={false}
          onFocus={() => picking.open(true)}
          onBlur={() => picking.open(false)}
          onInput={(event) => picking.type(event.currentTarget.value)}
          onKeyDown={picking.press}
        />
      </span>
      <div>
        <Unkept />
        {hint !== undefined && <Hint>{hint}</Hint>}
      </div>
      {shown && <Offers id={id} label={label} options={fitting} active={active} take={picking.take} />}
    </div>
  );
}

function usePicking(options: readonly PickOption[], pick: (value: string) => void) {
  const [text, setText] = useState('');
  const [isOpen, open] = useState(false);
  const [active, setActive] = useState(0);
  const fitting = fittingOptions(options, text).slice(0, MOST);
  const shown = isOpen && fitting.length > 0;
  const type = (next: string) => {
    setText(next);
    setActive(0);
    open(true);
  };
  const take = ({ value }: PickOption) => {
    type('');
    open(false);
    pick(value);
  };
  const walk = (by: number) => {
    open(true);
    if (shown) setActive((active + by + fitting.length) % fitting.length);
  };
  const chosen = fitting[active];
  const keys: Readonly<Record<string, () => void>> = {
    ArrowDown: () => walk(1),
    ArrowUp: () => walk(-1),
    ...(shown && { Escape: () => open(false), ...(chosen && { Enter: () => take(chosen) }) }),
  };
  const press = (event: KeyboardEvent) => {
    const run = keys[event.key];
    if (!run) return;
    event.preventDefault();
    event.stopPropagation();
    run();
  };
  return { text, fitting, active, shown, open, type, take, press };
}

interface OffersParts {
  readonly id: string;
  readonly label: string;
  readonly options: readonly PickOption[];
  readonly active: number;
  readonly take: (option: PickOption) => void;
}

function Offers({ id, label, options, active, take }: OffersParts) {
  return (
    <ul id={`${id}-list`} class={listLook['offers']} role="listbox" aria-label={label}>
      {options.map((option, at) => (
        <li
          key={option.value}
          id={`${id}-${at}`}
          role="option"
          aria-selected={at === active}
          onMouseDown={(event) => {
            event.preventDefault();
            take(option);
          }}
        >
          <b>{option.value}</b>
          <span class={listLook['label']}>{option.label}</span>
        </li>
      ))}
    </ul>
  );
}

/** Options whose code begins so come first, then those with the words in their name, in any order. */
export function fittingOptions(options: readonly PickOption[], text: string): readonly PickOption[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const [code = ''] = words;
  const begins = ({ value }: PickOption) => value.toLowerCase().startsWith(code);
  const fits = ({ value, label }: PickOption) => {
    const all = `${value} ${label}`.toLowerCase();
    return words.every((word) => all.includes(word));
  };
  const found = options.filter(fits);
  return code === '' ? found : [...found.filter(begins), ...found.filter((option) => !begins(option))];
}
