import { app } from 'electron';
import { commandWords } from './command-words.ts';
import { runCommand } from './run-command.ts';
import { startDesktop } from './start-desktop.ts';

// Not awaited: Electron is ready only after this file has been evaluated.
const words = commandWords(process.argv, app.isPackaged);
void (words ? runCommand(words) : startDesktop());
