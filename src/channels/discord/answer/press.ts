import type { Who } from '../../../../shared/channel.js';
import type { Action, Message } from '../../../../shared/messages.js';
import { asId, type GroupId } from '../../../../shared/ids.js';
import { hashOf, markOf, readPressed, writePressed } from '../custom-id.js';
import type { From } from '../read/interaction.js';
import { modalOf } from '../render/modal.js';
import { opensAtOnce } from '../render/pieces.js';
import { say } from '../words.js';
import { act, lookFor } from './act.js';
import type { Answer, Desk, ShownForm } from './desk.js';
import { bindGroup } from './here.js';
import { codeForm } from './join.js';
import { lookButton, merged, shown, told, word } from './show.js';

function isForm(message: Message, hash: string): ShownForm['form'] | undefined {
  return message.blocks.find((block) => block.type === 'form' && hashOf(block.action) === hash) as
    ShownForm['form'] | undefined;
}

/** Finds a form again: as the look shows it now, else as it was shown. */
export async function findForm(
  desk: Desk,
  from: From,
  who: Who,
  hash: string,
  origin: Action | null,
): Promise<ShownForm | null> {
  if (origin !== null) {
    const reply = await desk.house.look(who, origin.name, origin.args);
    const form = reply.done ? isForm(merged(reply.messages), hash) : undefined;
    if (form !== undefined) return { form, origin };
  }
  return desk.forms.find(`${from.user}|${hash}`) ?? null;
}

async function findAction(
  desk: Desk,
  from: From,
  who: Who,
  hash: string,
  origin: Action | null,
): Promise<Action | null> {
  const kept = desk.actions.find(`${from.user}|${hash}`);
  if (kept !== undefined || origin === null) return kept ?? null;
  const { messages } = await desk.house.look(who, origin.name, origin.args);
  const choices = merged(messages).blocks.flatMap((block) => (block.type === 'choices' ? block.choices : []));
  return choices.find(({ action }) => hashOf(action) === hash)?.action ?? null;
}

/** Opens a part of a form; where it is too late for that, a button that opens it. */
export function opened(desk: Desk, from: From, { form, origin }: ShownForm, page: number): Answer {
  const hash = hashOf(form.action);
  desk.forms.keep(`${from.user}|${hash}`, { form, origin });
  const kept = desk.typed.find(`${from.user}|${hash}`) ?? {};
  const id = writePressed({ does: 'open', hash, page, origin });
  return {
    modal: modalOf({ form, origin, opening: BigInt(from.id).toString(36), page, kept }),
    instead: told(form.title, [{ id, label: say('open it'), main: true }]),
  };
}

/** A stem was pressed in the step that shows it: its form opens at once. */
async function openMain(desk: Desk, from: From, who: Who, action: Action): Promise<Answer> {
  const look = await lookFor(desk, who, action);
  const reply = await desk.house.look(who, look.name, look.args);
  const form = merged(reply.messages).blocks.find((block) => block.type === 'form' && block.main);
  if (form?.type !== 'form') return shown(desk, from, reply.messages, look);
  return opened(desk, from, { form, origin: look }, 0);
}

const tooOld = (): Answer => word('too old', [lookButton('for you', 'for-you', true)]);

/** Answers a button. */
export async function press(desk: Desk, from: From, who: Who, id: string): Promise<Answer> {
  const pressed = readPressed(id);
  if (pressed === null) return tooOld();
  switch (pressed.does) {
    case 'act':
      return markOf(id).startsWith(opensAtOnce) && pressed.action.kind === 'look'
        ? openMain(desk, from, who, pressed.action)
        : act(desk, from, who, pressed.action);
    case 'long': {
      const action = await findAction(desk, from, who, pressed.hash, pressed.origin);
      if (action === null) return tooOld();
      return markOf(id).startsWith(opensAtOnce) && action.kind === 'look'
        ? openMain(desk, from, who, action)
        : act(desk, from, who, action);
    }
    case 'open': {
      const found = await findForm(desk, from, who, pressed.hash, pressed.origin);
      return found === null ? tooOld() : opened(desk, from, found, pressed.page);
    }
    case 'page': {
      const page = desk.pages.find(`${from.user}|${pressed.key}`)?.[pressed.page];
      return page === undefined ? word('page gone') : { show: [page] };
    }
    case 'bind':
      return bindGroup(desk, from, who, asId<GroupId>(pressed.group));
    case 'join':
      return codeForm();
    default:
      return pressed satisfies never;
  }
}
