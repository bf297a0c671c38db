import { Fragment, type ComponentChildren } from 'preact';
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

interface Minded {
  readonly words: string;
  /** In a sentence; may be empty. */
  readonly decides: string;
}

/** A section of a panel or a page with its cautions; nothing if there are none. */
export function CautionPart({ cautions }: { readonly cautions: readonly Minded[] }) {
  if (cautions.length === 0) return null;
  return (
    <section class={css['caution']}>
      <h3>{cautions.length === 1 ? 'Caution' : 'Cautions'}</h3>
      {cautions.map(({ words, decides }) => (
        <Fragment key={words}>
          <p>{words}</p>
          {decides !== '' && <p class={css['decides']}>{decides}</p>}
        </Fragment>
      ))}
    </section>
  );
}

/** Cautions in a column. */
export function Cautions({ children }: { readonly children: ComponentChildren }) {
  return <div class={css['cautions']}>{children}</div>;
}
