import type { ComponentChildren } from 'preact';
import css from './tabs.module.css';

/** Links to the parts of a view; the current one has `aria-current`. */
export function Tabs({ label, children }: { readonly label: string; readonly children: ComponentChildren }) {
  return (
    <nav class={css['tabs']} aria-label={label}>
      {children}
    </nav>
  );
}
