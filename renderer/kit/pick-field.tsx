import { useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import listLook from '#renderer/writing/completion-list.module.css';
import { Hint } from './note.tsx';
import css from './field.module.css';
import pickLook from './pick-field.module.css';

export interface PickOption {
  readonly value: string;
  /** In words, beside the code. */
  readonly label: string;
}

interface PickParts {
  readonly label: string;
  readonly hint?: string;
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
  const [text, setText] = useState('');
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(0);
  const fitting = fittingOptions(options, text).slice(0, MOST);
  const shown = open && fitting.length > 0;
  const take = (option: PickOption | undefined) => {
    if (!option) return;
    setText('');
    setActive(0);
    setOpen(false);
    pick(option.value);
  };
  const walk = (by: number) => {
    setOpen(true);
    if (fitting.length > 0) setActive(shown ? (active + by + fitting.length) % fitting.length : 0);
  };
  const keys: Readonly<Record<string, () => void>> = {
    ArrowDown: () => walk(1),
    ArrowUp: () => walk(-1),
    ...(shown && { Enter: () => take(fitting[active]), Escape: () => setOpen(false) }),
  };
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
          onFocus={() => setOpen(true)}
          onBlur={() => setOpen(false)}
          onInput={(event) => {
            setText(event.currentTarget.value);
            setActive(0);
            setOpen(true);
          }}
          onKeyDown={(event) => {
            const run = keys[event.key];
            if (!run) return;
            event.preventDefault();
            event.stopPropagation();
            run();
          }}
        />
      </span>
      {hint !== undefined && <Hint>{hint}</Hint>}
      {shown && <Offers id={id} label={label} options={fitting} active={active} take={take} />}
    </div>
  );
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
