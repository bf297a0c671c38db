/** A picture that explains a word; the page draws it. */
export type PictureName = 'layers' | 'dam' | 'drainage' | 'capping' | 'soil' | 'litter' | 'corner' | 'packs' | 'range';

/** One word of the trade or of the program. In `says`, `{id}` and `{id|words}` are links to other topics. */
export interface Word {
  readonly word: string;
  readonly says: string;
  readonly picture?: PictureName;
}
