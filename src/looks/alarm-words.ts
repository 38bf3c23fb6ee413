import { Fault } from '../../shared/fault.js';
import type { AlarmId } from '../../shared/ids.js';
import type { Look } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import type { Role } from '../../shared/roles.js';
import type { Alarm } from '../practice/state.js';
import { answer, found, nameOf, staff, type Asked } from './asked.js';
import { choice, choices, heading, list, look, prose, quotation } from './blocks.js';

/** Under which reference the store keeps an alarm's words; the state doesn't hold it, so that nothing else can follow it. */
async function referenceOf(asked: Asked, alarm: AlarmId): Promise<string | null> {
  const events = await asked.port.store.events(asked.state.id);
  const raised = events.find((event) => event.type === 'alarm-raised' && event.alarm === alarm);
  return raised?.type === 'alarm-raised' && 'ref' in raised.words ? raised.words.ref : null;
}

/** Whether somebody sees the words of an alarm: the lead always, the deputy once it went on to them, nobody else. */
export function maySeeWords(role: Role, { escalated }: Pick<Alarm, 'escalated'>): boolean {
  return role === 'safeguarding lead' || (role === 'safeguarding deputy' && escalated);
}

/** The exact words of an alarm, for the named adults; the store records the look before it gives them. */
export async function alarmWords(
  asked: Asked,
  { alarm: id }: Extract<Look, { type: 'alarm-words' }>,
): Promise<readonly Message[]> {
  const alarm = found(asked.state.alarms[id], 'an alarm');
  if (!maySeeWords(asked.by.role, alarm)) {
    throw new Fault(
      'not allowed',
      'Cannot show these words, expected an alarm that went on to the deputy',
      'Ask the safeguarding lead, or wait until it is passed on.',
    );
  }
  const { store, when } = asked.port;
  const ref = await referenceOf(asked, id);
  const words = ref === null ? null : await store.sealedWords(ref, asked.by.id, asked.at);
  const looks = ref === null ? [] : await store.sealedLooks(ref);
  const title = staff('alarm of', { who: nameOf(asked.state, alarm.person), when: when(alarm.at) });
  return [
    answer(asked, title, [
      heading(title),
      words === null ? prose(staff('words gone')) : quotation(words, nameOf(asked.state, alarm.person)),
      prose(staff('look recorded')),
      ...list(looks.map(({ by, at }) => staff('looked', { who: nameOf(asked.state, by), when: when(at) }))),
      ...choices(null, [choice(staff('see alarms'), look('alarms'))]),
    ]),
  ];
}
