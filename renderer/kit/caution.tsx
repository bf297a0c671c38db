import type { ComponentChildren } from 'preact';
import css from './caution.module.css';

interface CautionProps {
  readonly children: ComponentChildren;
  /** Who decides, in a sentence. */
  readonly decides?: string | undefined;
  /** A further note, in a sentence. */
  readonly note?: string;
  readonly role?: 'alert' | 'status';
}

/** What to mind, and who decides. */
export function Caution({ children, decides, note, role }: CautionProps) {
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

/** The cautions of a panel or a page, each a section. */
export function CautionParts({ cautions }: { readonly cautions: readonly Minded[] }) {
  return (
    <>
      {cautions.map(({ words, decides }) => (
        <CautionPart key={words} decides={decides === '' ? undefined : decides}>
          {words}
        </CautionPart>
      ))}
    </>
  );
}

/** A section of a panel or a page that is one caution. */
export function CautionPart({ children, decides }: Pick<CautionProps, 'children' | 'decides'>) {
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
