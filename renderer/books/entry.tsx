import { useEffect, useRef, useState } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { Sign } from '#renderer/frame/sign.tsx';

interface Told {
  readonly label: string;
  /** What it is of, for readers where the eye sees it. */
  readonly of?: string;
  readonly unit?: string;
  /** In small type below. */
  readonly hint?: string;
  readonly figure?: boolean;
}

interface TextEntryParts extends Told {
  readonly text: string;
  readonly typing: (text: string) => void;
  /** What is wrong with the text as it stands. */
  readonly wrong?: string | undefined;
  readonly enter?: () => void;
}

/** A well with its label, told of every key. */
export function TextEntry({ label, of, unit, hint, figure, text, typing, wrong, enter }: TextEntryParts) {
  const id = useOwnId();
  return (
    <div class="entry">
      <label for={id}>
        {label}
        {of !== undefined && <span class="unseen"> of {of}</span>}
      </label>
      <span class={figure ? 'well figure' : 'well'}>
        <input
          id={id}
          value={text}
          autocomplete="off"
          spellcheck={false}
          aria-invalid={wrong !== undefined}
          aria-describedby={`${id}-said`}
          onInput={(event) => typing(event.currentTarget.value)}
          onKeyDown={(event) => event.key === 'Enter' && enter?.()}
        />
        {unit !== undefined && unit !== '' && <span class="u">{unit}</span>}
      </span>
      <Below id={id} wrong={wrong} hint={hint} />
    </div>
  );
}

interface SettledEntryParts extends Told {
  /** What stands in the book. */
  readonly text: string;
  /** Takes the text, or says why not; then it stays in the field. */
  readonly settle: (text: string) => string | undefined;
  readonly lines?: boolean;
  readonly longest?: number;
}

/** A well whose text goes into the book with Enter or when one goes on; Escape leaves it as it was. */
export function SettledEntry(parts: SettledEntryParts) {
  const { label, unit, hint, figure, lines = false, longest = 2_000 } = parts;
  const id = useOwnId();
  const { written, write, wrong, leave, back } = useWritten(parts);
  const onKeyDown = (event: KeyboardEvent) => {
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
    <div class="entry">
      <label for={id}>{label}</label>
      <span class={figure ? 'well figure' : 'well'}>
        {lines ? (
          <textarea {...field} rows={4} onInput={(event) => write(event.currentTarget.value)} />
        ) : (
          <input {...field} onInput={(event) => write(event.currentTarget.value)} />
        )}
        {unit !== undefined && unit !== '' && <span class="u">{unit}</span>}
      </span>
      <Below id={id} wrong={wrong} hint={hint} />
    </div>
  );
}

/** The text as it is being written; it follows the book whenever that says something else. */
function useWritten({ text, settle }: Pick<SettledEntryParts, 'text' | 'settle'>) {
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
  return { written, write, wrong, leave, back };
}

interface ChoiceEntryParts extends Told {
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly choose: (value: string) => void;
}

/** One of some words. */
export function ChoiceEntry({ label, hint, value, options, choose }: ChoiceEntryParts) {
  const id = useOwnId();
  return (
    <div class="entry">
      <label for={id}>{label}</label>
      <span class="well">
        <select
          id={id}
          value={value}
          aria-describedby={`${id}-said`}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        <Sign name="fold" look="chevron" />
      </span>
      <Below id={id} wrong={undefined} hint={hint} />
    </div>
  );
}

interface BelowParts {
  readonly id: string;
  readonly wrong: string | undefined;
  readonly hint: string | undefined;
}

/** Under a well: what is wrong, or else a hint. */
function Below({ id, wrong, hint }: BelowParts) {
  return (
    <div id={`${id}-said`} aria-live="polite">
      {wrong !== undefined && <p class="wrong">{wrong}</p>}
      {wrong === undefined && hint !== undefined && <p class="hint">{hint}</p>}
    </div>
  );
}
