import type { TargetedKeyboardEvent } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { CompletionList } from './completion-list.tsx';
import { markedText } from './marked-text.ts';
import { fieldAct } from './rule-keys.ts';
import type { RuleCheck, RuleHint } from './rule-help.ts';
import { useRuleText, type RuleFieldParts } from './use-rule-text.ts';
import { Unkept } from '#renderer/kit/unkept.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import css from './rule-field.module.css';

/** Above the limit of 2,000, so that an over-long paste is rejected and not truncated. */
const MOST_LETTERS = 10_000;

/** A field for one rule or figure: completes names in a list, marks faults in the text and explains them below. */
export function RuleField(parts: RuleFieldParts) {
  const id = useOwnId();
  const field = useRef<HTMLTextAreaElement>(null);
  const writing = useRuleText(parts, (at) => queueMicrotask(() => field.current?.setSelectionRange(at, at)));
  const { text, cursor, offers, active, refused } = writing;
  const check = parts.help.check(text);
  const faults = refused === undefined ? check.faults.map((fault) => fault.says) : [refused];
  useLayoutEffect(() => takeFocus(field.current, parts.focus), []);

  const onKeyDown = (event: TargetedKeyboardEvent<HTMLTextAreaElement>) => {
    const act = fieldAct(event, { listed: offers.length > 0, active, form: parts.form });
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    writing.run(act);
  };
  return (
    <div class={parts.form === 'box' ? `${css['field']} ${css['box']}` : css['field']}>
      <div class={css['well']} data-faulty={faults.length > 0}>
        <Marks text={text} check={check} />
        <textarea
          ref={field}
          rows={1}
          value={text}
          readOnly={parts.readOnly}
          spellcheck={false}
          autocomplete="off"
          maxLength={MOST_LETTERS}
          aria-label={parts.label}
          aria-autocomplete="list"
          aria-controls={offers.length > 0 ? `${id}-list` : undefined}
          aria-activedescendant={active >= 0 ? `${id}-${active}` : undefined}
          aria-invalid={faults.length > 0}
          aria-describedby={`${id}-said`}
          onInput={(event) => writing.put(event.currentTarget.value, event.currentTarget.selectionStart)}
          onSelect={(event) => writing.moved(event.currentTarget.selectionStart)}
          onKeyDown={onKeyDown}
          onBlur={writing.left}
        />
      </div>
      {offers.length > 0 && <CompletionList id={id} offers={offers} active={active} take={writing.accept} />}
      <Said id={`${id}-said`} faults={faults} hint={offers.length === 0 ? parts.help.hint(text, cursor) : undefined} />
    </div>
  );
}

const looks = { function: css['function'], name: css['name'], fault: css['fault'] };

/** The same text under the field, with its parts marked; it makes the field as high as its text. */
function Marks({ text, check }: { readonly text: string; readonly check: RuleCheck }) {
  return (
    <div class={css['marks']} aria-hidden="true">
      {markedText(text, check).map((piece, index) => (
        <span
          key={index}
          class={piece.looks.map((look) => looks[look]).join(' ')}
          data-fault={piece.looks.includes('fault')}
        >
          {piece.text}
        </span>
      ))}
    </div>
  );
}

interface SaidParts {
  readonly id: string;
  readonly faults: readonly string[];
  readonly hint: RuleHint | undefined;
}

function Said({ id, faults, hint }: SaidParts) {
  return (
    <div id={id} class={css['said']} aria-live="polite">
      <Unkept />
      {faults.map((says) => (
        <p key={says} class={css['says']} data-fault>
          {says}
        </p>
      ))}
      {hint && (
        <Hint>
          <code>{hint.written}</code> {hint.says}
        </Hint>
      )}
    </div>
  );
}

function takeFocus(field: HTMLTextAreaElement | null, focus: 'end' | undefined): void {
  if (!field || focus === undefined) return;
  field.focus();
  field.setSelectionRange(field.value.length, field.value.length);
}
