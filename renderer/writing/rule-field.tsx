import type { Ref, TargetedKeyboardEvent } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { useOwnId } from '#renderer/frame/use-own-id.ts';
import { markedText } from './marked-text.ts';
import { fieldAct } from './rule-keys.ts';
import type { RuleCheck, RuleHint } from './rule-help.ts';
import { areWhole, useRuleText, type RuleFieldParts, type RuleText } from './use-rule-text.ts';
import { Unkept } from '#renderer/kit/unkept.tsx';
import { DayPicker, openedByKey } from '#renderer/kit/day-picker.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { OfferList } from '#renderer/kit/offer-list.tsx';
import css from './rule-field.module.css';

/** Above the limit of 2,000, so that an over-long paste is rejected and not truncated. */
const MOST_LETTERS = 10_000;

/** A field for one rule or figure: completes names in a list, marks faults in the text and explains them below. */
export function RuleField(parts: RuleFieldParts) {
  const id = useOwnId();
  const field = useRef<HTMLTextAreaElement>(null);
  const writing = useRuleText(parts, (at) => queueMicrotask(() => field.current?.setSelectionRange(at, at)));
  const { form, help, label } = parts;
  const { text, cursor, offers, active, refused } = writing;
  const check = help.check(text);
  const faults = refused === undefined ? check.faults.map((fault) => fault.says) : [refused];
  useLayoutEffect(() => takeFocus(field.current, parts.focus), []);
  const listed = offers.length > 0;
  return (
    <div class={form === 'box' ? `${css['field']} ${css['box']}` : css['field']}>
      <div class={css['well']} data-faulty={faults.length > 0}>
        <Marks text={text} check={check} />
        <Text {...{ id, field, parts, writing }} faulty={faults.length > 0} />
        {help.days && <DayPicker label={label} days={help.days} text={text} pick={writing.pick} />}
      </div>
      {listed && <OfferList {...{ id, offers, active }} over={form === 'box'} take={writing.take} />}
      <Said id={`${id}-said`} faults={faults} hint={listed ? undefined : help.hint(text, cursor)} />
    </div>
  );
}

interface TextParts {
  readonly id: string;
  readonly field: Ref<HTMLTextAreaElement>;
  readonly parts: RuleFieldParts;
  readonly writing: RuleText;
  readonly faulty: boolean;
}

function Text({ id, field, parts, writing, faulty }: TextParts) {
  const { text, offers, active } = writing;
  const listed = offers.length > 0;
  const onKeyDown = (event: TargetedKeyboardEvent<HTMLTextAreaElement>) => {
    if (parts.help.days && openedByKey(event)) return;
    const act = fieldAct(event, { listed, active, whole: areWhole(offers), form: parts.form });
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    writing.run(act);
  };
  return (
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
      aria-controls={listed ? `${id}-list` : undefined}
      aria-activedescendant={active >= 0 ? `${id}-${active}` : undefined}
      aria-invalid={faulty}
      aria-describedby={`${id}-said`}
      onInput={(event) => writing.put(event.currentTarget.value, event.currentTarget.selectionStart)}
      onSelect={(event) => writing.moved(event.currentTarget.selectionStart)}
      onKeyDown={onKeyDown}
      onBlur={writing.left}
    />
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
