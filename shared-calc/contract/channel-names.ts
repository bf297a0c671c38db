/**
 * The name of every channel between page and service; in its own file so that the desktop's preload loads nothing else.
 */
export const channelNames = [
  'book.read',
  'book.info',
  'book.since',
  'book.apply',
  'book.undo',
  'book.redo',
  'bench.confirm',
  'quote.issue',
  'program.about',
  'file.recent',
  'file.open',
  'file.new',
  'file.putBack',
  'file.backups',
  'file.previewBackup',
  'file.restore',
  'recovery.read',
  'recovery.restore',
  'recovery.salvage',
  'recovery.putAside',
] as const;

export type Channel = (typeof channelNames)[number];

export function isChannel(name: string): name is Channel {
  return channelNames.some((each) => each === name);
}

/** The result of `of` for each channel, by name. */
export function mapChannels<T>(of: (channel: Channel) => T): Readonly<Record<Channel, T>> {
  return Object.fromEntries(channelNames.map((channel) => [channel, of(channel)])) as Record<Channel, T>;
}
