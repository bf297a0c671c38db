import { saySource } from '#shared-calc/bench/source-words.ts';
import { From } from '#renderer/kit/from.tsx';
import { PutIn } from '#renderer/kit/put-in.tsx';
import { RuleField } from '#renderer/writing/rule-field.tsx';
import type { PanelActs, PanelView } from './panel-view.ts';
import css from './working-panel.module.css';

interface RuleParts {
  readonly view: PanelView;
  readonly acts: PanelActs;
  /** The rule is shown; it stays so from cell to cell. */
  readonly isOpen: boolean;
  readonly turn: (isOpen: boolean) => void;
}

/** A figure or choice to write over; a rule one step away, with its name and its figures put in. */
export function RulePart({ view, acts, isOpen, turn }: RuleParts) {
  const { rule, nameInRules, putIn, from } = view;
  if (!rule) return null;
  const field = (
    <RuleField
      text={rule.text}
      label={`${rule.kind} of ${view.title}, ${view.where}`}
      help={acts.help}
      settle={acts.write}
      cancel={acts.leave}
      form="panel"
      readOnly={rule.closed}
    />
  );
  return (
    <section>
      {rule.kind !== 'Rule' && (
        <>
          <h3>{rule.kind}</h3>
          {field}
        </>
      )}
      <details class={css['rule']} open={isOpen} onToggle={(event) => turn(event.currentTarget.open)}>
        <summary>{rule.kind === 'Rule' ? 'Show the rule' : 'Name in rules'}</summary>
        {isOpen && (
          <>
            {nameInRules !== '' && (
              <p>
                <code>{nameInRules}</code>
              </p>
            )}
            {rule.kind === 'Rule' && field}
            {putIn && (
              <PutIn>
                {putIn.pieces.map((piece, index) => (piece.strong ? <b key={index}>{piece.text}</b> : piece.text))}
              </PutIn>
            )}
          </>
        )}
      </details>
      {from && (
        <p>
          <From of={from}>{saySource(from)}</From>
        </p>
      )}
    </section>
  );
}
