import type { ComponentChildren, TargetedKeyboardEvent } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import css from './field.module.css';
import { DayPicker, openedByKey, type Days } from './day-picker.tsx';
import { Hint } from './note.tsx';
import { Unkept } from './unkept.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';

export interface Named {
  readonly label: string;
  /** What the field belongs to, for screen readers; on screen its position shows it. */
  readonly of?: string;
  readonly unit?: string;
  /** Small type below the field. */
  readonly hint?: string;
  readonly figure?: boolean;
  /** The field is a day: a calendar can be picked from. */
  readonly days?: Days;
  /** In a row that says what it is: the label is for screen readers. */
  readonly quiet?: boolean;
}

interface TextFieldParts extends Named {
  readonly text: string;
  readonly typing: (text: string) => void;
  /** What is wrong with the current text. */
  readonly wrong?: string | undefined;
  readonly enter?: () => void;
}

interface LabelParts extends Pick<Named, 'label'> {
  readonly id: string;
  readonly of: string | undefined;
}

export function Label({ id, label, of }: LabelParts) {
  return (
    <label for={id}>
      {label}
      {of !== undefined && <Unseen> of {of}</Unseen>}
    </label>
  );
}

/** A text field with its label; reports every key press. */
export function TextField(parts: TextFieldParts) {
  const { label, of, unit, hint, figure, text, typing, wrong, enter, days } = parts;
  const id = useOwnId();
  return (
    <div class={css['field']}>
      <Label id={id} label={label} of={of} />
      <span class={figure ? `${css['well']} ${css['figure']}` : css['well']}>
        <input
          id={id}
          value={text}
          autocomplete="off"
          spellcheck={false}
          aria-invalid={wrong !== undefined}
          aria-describedby={`${id}-said`}
          onInput={(event) => typing(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (days && openedByKey(event)) return;
            if (event.key === 'Enter') enter?.();
          }}
        />
        {unit !== undefined && unit !== '' && <span class={css['unit']}>{unit}</span>}
        {days && <DayPicker label={label} days={days} text={text} pick={typing} />}
      </span>
      <Below id={id} wrong={wrong} hint={hint} />
    </div>
  );
}

interface SettledFieldParts extends Named {
  /** The stored text. */
  readonly text: string;
  /** Saves the text, or returns why not; then it stays in the field. */
  readonly settle: (text: string) => string | undefined;
  readonly lines?: boolean;
  readonly longest?: number;
  /** The id of a datalist to pick from. */
  readonly list?: string;
}

/** A text field that saves on Enter or on blur; Escape restores the stored text. */
export function SettledField(parts: SettledFieldParts) {
  const { label, of, unit, hint, figure, lines = false, longest = 2_000, list, days } = parts;
  const id = useOwnId();
  const { written, write, wrong, leave, back, put } = useWritten(parts);
  const onKeyDown = (event: TargetedKeyboardEvent<Element>) => {
    if (days && openedByKey(event)) return;
    if (event.key === 'Enter' && !lines) leave();
    if (event.key === 'Escape') back();
  };
  const field = {
    id,
    value: written,
    maxLength: longest,
    autocomplete: 'off',
    spellcheck: false,
    'aria-invalid': wrong !== undefined,
    'aria-describedby': `${id}-said`,
    onBlur: leave,
    onKeyDown,
  } as const;
  return (
    <div class={css['field']}>
      <Label id={id} label={label} of={of} />
      <span class={figure ? `${css['well']} ${css['figure']}` : css['well']}>
        {lines ? (
          <textarea {...field} rows={4} onInput={(event) => write(event.currentTarget.value)} />
        ) : (
          <input {...field} list={list} onInput={(event) => write(event.currentTarget.value)} />
        )}
        {unit !== undefined && unit !== '' && <span class={css['unit']}>{unit}</span>}
        {days && <DayPicker label={label} days={days} text={written} pick={put} />}
      </span>
      <Below id={id} wrong={wrong} hint={hint} />
    </div>
  );
}

/** The text being written; a new stored text replaces it. */
export function useWritten({ text, settle }: Pick<SettledFieldParts, 'text' | 'settle'>) {
  const [written, write] = useState(text);
  const [wrong, setWrong] = useState<string>();
  const shown = useRef(text);
  const back = () => {
    write(text);
    setWrong(undefined);
  };
  useEffect(() => {
    if (shown.current === text) return;
    shown.current = text;
    back();
  }, [text]);
  const leave = () => setWrong(written === text ? undefined : settle(written));
  const put = (picked: string) => {
    write(picked);
    setWrong(picked === text ? undefined : settle(picked));
  };
  return { written, write, wrong, leave, back, put };
}

interface ChoiceFieldParts extends Named {
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly choose: (value: string) => void;
}

/** A choice of one of several words. */
export function ChoiceField({ label, of, quiet = false, hint, value, options, choose }: ChoiceFieldParts) {
  const id = useOwnId();
  return (
    <div class={css['field']}>
      {!quiet && <Label id={id} label={label} of={of} />}
      <span class={css['well']}>
        <select
          id={id}
          aria-label={quiet ? label : undefined}
          value={value}
          aria-describedby={quiet ? undefined : `${id}-said`}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        <Sign name="fold" />
      </span>
      {!quiet && <Below id={id} wrong={undefined} hint={hint} />}
    </div>
  );
}

interface BelowParts {
  readonly id: string;
  readonly wrong: string | undefined;
  readonly hint: string | undefined;
}

/** Below a field: the fault, or the hint if there is none. */
export function Below({ id, wrong, hint }: BelowParts) {
  return (
    <div id={`${id}-said`} class={css['below']} aria-live="polite">
      <Unkept />
      {wrong !== undefined && <p class={css['wrong']}>{wrong}</p>}
      {wrong === undefined && hint !== undefined && <Hint>{hint}</Hint>}
    </div>
  );
}

interface FieldsParts {
  /** `wide` for words rather than figures; `short` for a few of them on a wide page. */
  readonly look?: 'wide' | 'short';
  readonly children: ComponentChildren;
}

/** Fields in rows, as many as fit. */
export function Fields({ look, children }: FieldsParts) {
  return <div class={look === undefined ? css['fields'] : `${css['fields']} ${css[look]}`}>{children}</div>;
}

/** A form row for any other control: its label, and the text below it. */
export function FieldBox({ label, children }: { readonly label: string; readonly children: ComponentChildren }) {
  return (
    <div class={css['field']}>
      <span class={css['label']}>{label}</span>
      {children}
    </div>
  );
}
