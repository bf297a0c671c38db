import type { SignName } from '#renderer/frame/sign.tsx';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Against, AgainstWhat } from '#shared-calc/derive/against-move.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { OVERHEAD } from '#shared-calc/price/hour-coins.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { ChoiceField, Fields, TextField } from './field.tsx';
import { Flag, FlagRows } from './flag.tsx';
import { Hint } from './note.tsx';

interface ListParts {
  readonly against: readonly Against[];
  readonly display: Display;
}

/** What stands against an act, the gravest first. */
export function AgainstList({ against, display }: ListParts) {
  return (
    <FlagRows label="What stands against it">
      {against.map(({ what, why }) => (
        <li key={`${what} ${why}`}>
          <Flag state={signOf[what]} sign={signOf[what] === 'needs' ? 'need' : signOf[what]}>
            {what}
          </Flag>
          <span>{readUnits(why, display)}</span>
        </li>
      ))}
    </FlagRows>
  );
}

const signOf: Readonly<Record<AgainstWhat, Exclude<SignName, 'need'> | 'needs'>> = {
  stop: 'stop',
  quarantine: 'watch',
  'watch not signed': 'watch',
  deposit: 'watch',
  goods: 'watch',
  'open step': 'watch',
  quote: 'watch',
  'not known yet': 'needs',
  'may not hold': 'watch',
  watch: 'watch',
};

interface AskedParts extends ListParts, ReasonParts {
  /** What becomes of the reason. */
  readonly hint: string;
}

/** What stands against an act that may be done all the same, and who decides that. */
export function AskedAgainst({ against, display, hint, ...reason }: AskedParts) {
  if (against.length === 0) return null;
  return (
    <>
      <p>This stands against it:</p>
      <AgainstList against={against} display={display} />
      <ReasonFields {...reason} />
      <Hint>{hint}</Hint>
    </>
  );
}

interface ReasonParts {
  readonly reason: Reason;
  readonly change: (reason: Reason) => void;
  readonly records: Pick<Records, 'rate'>;
  readonly enter: () => void;
}

/** Why it is done all the same, and who decides it. */
function ReasonFields({ reason, change, records, enter }: ReasonParts) {
  const rates = [...records.rate.values()].filter(({ id, per }) => per === 'h' && id !== OVERHEAD);
  return (
    <Fields look="wide">
      <TextField
        label="Why all the same"
        text={reason.anyway ?? ''}
        typing={(anyway) => change({ ...reason, anyway })}
        enter={enter}
      />
      <ChoiceField
        label="Who decides"
        value={reason.who ?? ''}
        options={[
          { value: '', label: 'not said yet' },
          ...rates.map(({ id, label }) => ({ value: id, label: label === '' ? id : label })),
        ]}
        choose={(who) => change({ ...reason, who })}
      />
    </Fields>
  );
}
