import type { ComponentChildren } from 'preact';

interface WideParts {
  readonly label: string;
  readonly children: ComponentChildren;
}

/** A table that a narrow window scrolls to the side, so that the paper stays in it. */
export function WideTable({ label, children }: WideParts) {
  return (
    <div class="paper-scroll" tabIndex={0} role="region" aria-label={label}>
      {children}
    </div>
  );
}
