import { useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { readChoice } from '#shared-calc/read/read-choice.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { Below, Label, useWritten, type Named } from './field.tsx';
import { OfferList, type Offer } from './offer-list.tsx';
import css from './field.module.css';

export interface PickOption {
  readonly value: string;
  /** In words, beside the code. */
  readonly label: string;
}

interface PickParts extends Named {
  readonly placeholder?: string;
  readonly options: readonly PickOption[];
  /** The values are codes that people know: they stand in the list, and an option is found by them. */
  readonly coded?: boolean;
  /** Another text than those of the list may stand here. */
  readonly free?: boolean;
  /** The stored text. */
  readonly text: string;
  /** Enter where no list is open: the field belongs to a form. */
  readonly enter?: (() => void) | undefined;
  /** Saves the value of an option, or the text as written, or returns why not; then it stays in the field. */
  readonly settle: (text: string) => string | undefined;
}

/** More are found by writing on. */
const MOST = 60;

/**
 * Picks from a list by code or name: what is written narrows it, arrows walk it, Enter takes one, Escape leaves what
 * was there.
 */
export function PickField(parts: PickParts) {
  const { label, of, quiet = false, hint, placeholder } = parts;
  const id = useOwnId();
  const { writing, list, offers, type, press } = usePicking(parts);
  const { active } = list;
  const shown = offers.length > 0;
  const take = (offer: Offer) => list.take(offers.indexOf(offer));
  return (
    <div class={css['field']}>
      {!quiet && <Label id={id} label={label} of={of} />}
      <span class={css['well']}>
        <input
          id={id}
          role="combobox"
          aria-label={quiet ? label : undefined}
          aria-expanded={shown}
          aria-controls={`${id}-list`}
          aria-autocomplete="list"
          aria-activedescendant={shown && active >= 0 ? `${id}-${active}` : undefined}
          aria-invalid={writing.wrong !== undefined}
          aria-describedby={`${id}-said`}
          value={writing.written}
          placeholder={placeholder}
          autocomplete="off"
          spellcheck={false}
          onFocus={(event) => event.currentTarget.select()}
          onClick={(event) => {
            if (list.isOpen) return;
            event.currentTarget.select();
            list.open();
          }}
          onBlur={() => {
            list.shut();
            writing.leave();
          }}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={press}
        />
        {shown && <OfferList over {...{ id, offers, active, take }} />}
      </span>
      <Below id={id} wrong={writing.wrong} hint={hint} />
    </div>
  );
}

function usePicking(parts: PickParts) {
  const { options, coded = true, free = false, text } = parts;
  const [sought, seek] = useState<string>();
  const [walked, walk] = useState<number>();
  const settle = (next: string) => {
    const refused = parts.settle(next);
    if (refused === undefined) writing.write(text);
    return refused;
  };
  const writing = useWritten({ text, settle });
  const found = sought === undefined ? [] : fittingOptions(options, sought, coded).slice(0, MOST);
  const here = found.findIndex(({ value, label }) => [value, label].includes(writing.written));
  const active = walked ?? (here < 0 && !free && sought !== '' ? 0 : here);
  const list: PickList = {
    count: found.length,
    active,
    isOpen: sought !== undefined,
    isBegun: (sought ?? '') !== '' || walked !== undefined,
    walk,
    open: () => seek(''),
    shut: () => {
      seek(undefined);
      walk(undefined);
    },
    take: (at) => {
      list.shut();
      const option = found[at];
      if (option) writing.put(option.value);
    },
  };
  return {
    writing,
    list,
    offers: found.map((option) => partsOf(option, coded)),
    type: (next: string) => {
      writing.write(next);
      walk(undefined);
      seek(next);
    },
    press: (event: KeyboardEvent) => pressKey(event, list, { ...writing, enter: parts.enter }),
  };
}

interface PickList {
  readonly count: number;
  readonly active: number;
  readonly isOpen: boolean;
  /** Something was written or walked to since it opened. */
  readonly isBegun: boolean;
  readonly walk: (to: number) => void;
  readonly open: () => void;
  readonly shut: () => void;
  readonly take: (at: number) => void;
}

interface Writing {
  readonly back: () => void;
  readonly leave: () => void;
  readonly enter: (() => void) | undefined;
}

function pressKey(event: KeyboardEvent, list: PickList, writing: Writing): void {
  const { key } = event;
  const run = (list.isOpen ? openKeys(list, writing) : shutKeys(list))[key];
  if (run) {
    event.preventDefault();
    // A form may go on to its next field.
    if (key !== 'Enter') event.stopPropagation();
    run();
  } else if (key === 'Tab' && list.isBegun && list.active >= 0) list.take(list.active);
  else if (key === 'Escape') writing.back();
  else if (key === 'Enter') {
    writing.leave();
    writing.enter?.();
  }
}

type Keys = Readonly<Record<string, () => void>>;

function openKeys({ active, count, walk, take, shut }: PickList, { back, leave }: Writing): Keys {
  const step = (from: number, by: number) => count > 0 && walk((from + by + count) % count);
  return {
    ArrowDown: () => step(active, 1),
    ArrowUp: () => step(Math.max(active, 0), -1),
    Enter: () => (active >= 0 ? take(active) : leave()),
    Escape: () => {
      shut();
      back();
    },
  };
}

function shutKeys({ open }: PickList): Keys {
  return { ArrowDown: open, ArrowUp: open };
}

/** The code, and the words without it. A value that is not a code that people know is not shown. */
function partsOf({ value, label }: PickOption, coded: boolean): Offer {
  const isCode = coded && value !== label && /\w/.test(value);
  if (!isCode) return { insert: '', label };
  return { insert: value, label: label.startsWith(`${value} `) ? label.slice(value.length + 1) : label };
}

/** Options whose code begins so come first, then those with the words in their name, in any order. */
export function fittingOptions(options: readonly PickOption[], text: string, coded = true): readonly PickOption[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const [code = ''] = words;
  const begins = ({ value, label }: PickOption) => (coded ? value : label).toLowerCase().startsWith(code);
  const fits = ({ value, label }: PickOption) => {
    const all = `${coded ? value : ''} ${label}`.toLowerCase();
    return words.every((word) => all.includes(word));
  };
  const found = options.filter(fits);
  return code === '' ? found : [...found.filter(begins), ...found.filter((option) => !begins(option))];
}

interface PickOneParts extends Omit<PickParts, 'text' | 'settle' | 'free'> {
  /** Empty: each that is taken leaves the field empty for the next. */
  readonly value: string;
  readonly choose: (value: string) => unknown;
}

/** One of some options, as `ChoiceField`, where there are more than a handful. */
export function PickOne({ value, choose, ...parts }: PickOneParts) {
  const { options, label } = parts;
  const settle = (text: string) => {
    const read = said(readChoice(text, label, options));
    if (!read.ok) return read.fault;
    const refused = read.value === value ? undefined : choose(read.value);
    return typeof refused === 'string' ? refused : undefined;
  };
  return <PickField {...parts} text={options.find((each) => each.value === value)?.label ?? value} settle={settle} />;
}
