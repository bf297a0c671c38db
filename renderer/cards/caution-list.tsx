import type { StepCaution } from '#shared-calc/prepare/cautions.ts';
import type { Reminder } from '#shared-calc/papers/audience-rules.ts';
import { sayUnits } from '#renderer/text/say-units.ts';

/** Cautions where the act happens, each with who decides. */
export function CautionList({ cautions }: { readonly cautions: readonly Pick<StepCaution, 'caution' | 'decides'>[] }) {
  if (cautions.length === 0) return null;
  return (
    <dl class="cautions">
      {cautions.map(({ caution, decides }) => (
        <div key={caution}>
          <dt>{sayUnits(caution)}</dt>
          <dd>{decides} decides.</dd>
        </div>
      ))}
    </dl>
  );
}

/** Rules for the people near it and for protected animals, in the same form. */
export function Reminders({ title, reminders }: { readonly title: string; readonly reminders: readonly Reminder[] }) {
  return (
    <section class="together">
      <h3>{title}</h3>
      <CautionList cautions={reminders.map(({ says, decides }) => ({ caution: says, decides }))} />
    </section>
  );
}
