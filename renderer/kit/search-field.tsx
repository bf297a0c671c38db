import type { ComponentChildren, Ref } from 'preact';
import { Sign } from '#renderer/frame/sign.tsx';
import { Unseen } from './unseen.tsx';
import css from './search-field.module.css';

interface SearchFieldParts {
  /** For screen readers; on screen the placeholder says it, which is the same if left out. */
  readonly label: string;
  readonly placeholder?: string;
  /** The id of a datalist that is offered. */
  readonly list?: string;
  /** Left out: the field keeps its text itself. */
  readonly text?: string;
  readonly typing?: (text: string) => void;
  readonly enter?: (input: HTMLInputElement) => void;
  readonly field?: Ref<HTMLInputElement>;
  /** Stands behind the input. */
  readonly children?: ComponentChildren;
}

/** A field to find something by its name. */
export function SearchField(parts: SearchFieldParts) {
  const { label, placeholder = label, text, typing, enter, field, list, children } = parts;
  return (
    <label class={css['field']}>
      <Unseen>{label}</Unseen>
      <Sign name="find" />
      <input
        ref={field ?? null}
        type="search"
        placeholder={placeholder}
        {...(text !== undefined && { value: text })}
        {...(list !== undefined && { list })}
        autocomplete="off"
        spellcheck={false}
        onInput={(event) => typing?.(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter?.(event.currentTarget);
        }}
      />
      {children}
    </label>
  );
}
