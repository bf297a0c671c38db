import type { Reminder } from './audience-rules.ts';
import { heading, stepCautions, stepCautionsBlock, type PaperBlock } from './document.ts';
import type { StepCaution } from '#shared-calc/prepare/cautions.ts';

interface Minded {
  readonly cautions: readonly StepCaution[];
  readonly audience: readonly Reminder[];
  readonly protection: readonly Reminder[];
}

/**
 * The cautions. Those about people at risk and about animal trade are grouped with this tank's audience and animals.
 */
export function mindedBlocks({ cautions, audience, protection }: Minded): readonly PaperBlock[] {
  const of = (wanted: string) => cautions.filter(({ step }) => step === wanted);
  return [
    heading('To mind'),
    stepCautionsBlock(cautions.filter(({ step }) => step !== 'enquiry' && step !== 'animal choice')),
    heading('Who is near it'),
    bareBlock([...of('enquiry'), ...audience.map(asCaution)]),
    heading('Protected kinds'),
    bareBlock([...of('animal choice'), ...protection.map(asCaution)]),
  ];
}

/** Its heading shows what they are about. */
function bareBlock(cautions: readonly StepCaution[]): PaperBlock {
  return { is: 'cautions', rows: stepCautions(cautions), bare: true };
}

function asCaution({ says, decides }: Reminder): StepCaution {
  return { step: '', caution: says, decides };
}
