import type { ComponentChildren } from 'preact';
import { Unseen } from './unseen.tsx';
import css from './search-field.module.css';

interface SearchFieldParts {
  /** For screen readers; on screen the placeholder says it. */
  readonly label: string;
  /** The input of type `search`, and what stands around it. */
  readonly children: ComponentChildren;
}

/** The frame of a field to find something by its name. */
export function SearchField({ label, children }: SearchFieldParts) {
  return (
    <label class={css['field']}>
      <Unseen>{label}</Unseen>
      {children}
    </label>
  );
}
