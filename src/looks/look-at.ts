import { Fault } from '../../shared/fault.js';
import type { PersonId } from '../../shared/ids.js';
import { mayLook, type Look } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import type { Instant } from '../../shared/time.js';
import type { ClassState } from '../practice/state.js';
import { alarmWords } from './alarm-words.js';
import { alarms } from './alarms.js';
import { askedBy, type Asked } from './asked.js';
import { atTheTable } from './at-the-table.js';
import { digest } from './digest.js';
import { forYou } from './for-you.js';
import { help } from './help.js';
import { morningList } from './morning-list.js';
import { passages } from './passages.js';
import type { LookPort } from './port.js';
import { post } from './post.js';
import { preview } from './preview.js';
import { previewText } from './preview-text.js';
import { roster } from './roster.js';
import { settings } from './settings.js';
import { step } from './step.js';
import { turn } from './turn.js';
import { waiting } from './waiting.js';
import { whereAreWe } from './where-are-we.js';
import { words } from './words.js';

type Shown = readonly Message[] | Promise<readonly Message[]>;

/** How each look is shown. */
const looks: { readonly [N in Look['type']]: (asked: Asked, look: Extract<Look, { type: N }>) => Shown } = {
  turn,
  step,
  'for-you': forYou,
  'where-are-we': whereAreWe,
  passages,
  preview,
  'preview-text': previewText,
  waiting,
  alarms,
  'alarm-words': alarmWords,
  digest,
  words,
  roster,
  settings,
  'morning-list': morningList,
  'at-the-table': atTheTable,
  post,
  help,
};

/** What a person is shown; changes nothing but the record of a look at an alarm's words. Throws `Fault` 'not allowed' or 'not found'. */
export async function lookAt(
  port: LookPort,
  state: ClassState,
  by: PersonId,
  look: Look,
  at: Instant,
): Promise<readonly Message[]> {
  const person = state.people[by];
  if (person === undefined || person.removed || !mayLook[look.type].includes(person.role)) {
    throw new Fault(
      'not allowed',
      `Cannot show that, expected ${mayLook[look.type].join(' or ')}`,
      'Go back to your own page.',
    );
  }
  const show = looks[look.type] as (asked: Asked, look: Look) => Shown;
  return show(askedBy(port, state, person, at), look);
}
