import { Menu, type ContextMenuParams, type MenuItemConstructorOptions, type WebContents } from 'electron';

/** The system's acts on a text: in a field to write in, or on words that are marked. None elsewhere. */
export function textMenuOf({
  isEditable,
  selectionText,
}: Pick<ContextMenuParams, 'isEditable' | 'selectionText'>): MenuItemConstructorOptions[] {
  const copy: MenuItemConstructorOptions = { label: 'Copy', role: 'copy' };
  if (!isEditable) return selectionText.trim() === '' ? [] : [copy];
  return [
    { label: 'Cut', role: 'cut' },
    copy,
    { label: 'Paste', role: 'paste' },
    { type: 'separator' },
    { label: 'Select all', role: 'selectAll' },
  ];
}

/** A right press in a text field opens the system's acts; the page itself opens those of everything else. */
export function giveTextMenu(contents: WebContents): void {
  contents.on('context-menu', (_event, params) => {
    const items = textMenuOf(params);
    if (items.length > 0) Menu.buildFromTemplate(items).popup();
  });
}
