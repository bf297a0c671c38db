import type { ComponentChildren } from 'preact';
import css from './caution.module.css';

interface CautionParts {
  readonly children: ComponentChildren;
  /** Who decides, in a sentence. */
  readonly decides?: string | undefined;
  /** A further note, in a sentence. */
  readonly note?: string;
  readonly role?: 'alert' | 'status';
}

/** What to mind, and who decides. */
export function Caution({ children, decides, note, role }: CautionParts) {
  return (
    <div class={css['caution']} role={role}>
      {children}
      {decides !== undefined && <p class={css['under']}>{decides}</p>}
      {note !== undefined && <p class={css['under']}>{note}</p>}
    </div>
  );
}

/** A section of a panel or a page that is one caution. */
export function CautionPart({ children, decides }: Pick<CautionParts, 'children' | 'decides'>) {
  return (
    <section class={css['caution']}>
      <h3>Caution</h3>
      <p>{children}</p>
      {decides !== undefined && <p class={css['decides']}>{decides}</p>}
    </section>
  );
}

/** Cautions in a column. */
export function Cautions({ children }: { readonly children: ComponentChildren }) {
  return <div class={css['cautions']}>{children}</div>;
}
