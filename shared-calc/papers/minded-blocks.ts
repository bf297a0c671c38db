import type { CautionId, SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { heading, type PaperBlock } from './document.ts';

interface Minded {
  readonly cautions: readonly SaidCaution[];
  readonly audience: readonly SaidCaution[];
  readonly protection: readonly SaidCaution[];
}

/**
 * The cautions. Those about people at risk and about animal trade are grouped with this tank's audience and animals.
 */
export function mindedBlocks({ cautions, audience, protection }: Minded): readonly PaperBlock[] {
  const of = (wanted: CautionId) => cautions.filter(({ id }) => id === wanted);
  return [
    heading('To mind'),
    briefBlock(cautions.filter(({ id }) => id !== 'peopleAtRisk' && id !== 'protectedKinds')),
    heading('Who is near it'),
    bareBlock([...of('peopleAtRisk'), ...audience]),
    heading('Protected kinds'),
    bareBlock([...of('protectedKinds'), ...protection]),
  ];
}

/** These cards are full: who decides stands on them, where it comes from does not. */
function briefBlock(rows: readonly SaidCaution[]): PaperBlock {
  return { is: 'cautions', rows, brief: true };
}

/** Its heading shows what they are about. */
function bareBlock(rows: readonly SaidCaution[]): PaperBlock {
  return { is: 'cautions', rows, bare: true, brief: true };
}
