import type { SlashCommand } from '../shared/slash-command.js';
import { classSettings } from './class.js';
import { digest } from './digest.js';
import { groups } from './groups.js';
import { held } from './held.js';
import { help } from './help.js';
import { passages } from './passages.js';
import { practice } from './practice.js';
import { roster } from './roster.js';
import { words } from './words.js';

/** Every slash command, in the order in which help lists them. */
export const slashCommands: readonly SlashCommand[] = [
  passages,
  practice,
  held,
  digest,
  words,
  groups,
  roster,
  classSettings,
  help,
];
