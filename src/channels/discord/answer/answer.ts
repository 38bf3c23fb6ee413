import { Fault } from '../../../../shared/fault.js';
import type { Who } from '../../../../shared/channel.js';
import type { FieldOption } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { readPressed } from '../custom-id.js';
import type { Asked } from '../read/interaction.js';
import { short } from '../render/plain.js';
import { readSubmitted } from '../submitted-id.js';
import { say } from '../words.js';
import { command } from './command.js';
import type { Answer, Desk } from './desk.js';
import { formSent } from './form.js';
import { here } from './here.js';
import { join, stranger } from './join.js';
import { press } from './press.js';
import { told, word } from './show.js';

async function suggest(
  desk: Desk,
  who: Who,
  asked: Extract<Asked, { kind: 'suggest' }>,
): Promise<readonly FieldOption[]> {
  if (asked.command.name === 'here') return desk.house.suggest(who, 'groups', asked.typed);
  const from = desk.options.slashCommands
    .find(({ name }) => name === asked.command.name)
    ?.actions.find(({ name }) => name === asked.command.action)
    ?.options.find(({ name }) => name === asked.option)?.from;
  return from === undefined ? [] : desk.house.suggest(who, from, asked.typed);
}

/** What a stranger may do: come in. */
function comesIn(asked: Asked): boolean {
  if (asked.kind === 'command') return asked.name === 'join';
  if (asked.kind === 'press') return readPressed(asked.press)?.does === 'join';
  return asked.kind === 'form' && readSubmitted(asked.form)?.form === 'code';
}

async function answerOf(desk: Desk, asked: Asked): Promise<Answer> {
  if (asked.kind === 'ping') return { pong: true };
  if (asked.tenant === null || asked.user === '') {
    return asked.kind === 'suggest' ? { suggest: [] } : word('only in servers');
  }
  if (asked.kind === 'command' && asked.name === 'join') {
    return join(desk, asked, asked.tenant, asked.given.texts['code'] ?? '');
  }
  const who = await desk.house.identify('discord', asked.tenant, asked.user);
  if (who === null && !comesIn(asked)) return asked.kind === 'suggest' ? { suggest: [] } : stranger();
  if (asked.kind === 'form') return formSent(desk, asked, who, asked.form, asked.given);
  if (who === null) return asked.kind === 'press' ? press(desk, asked, nobody, asked.press) : stranger();
  switch (asked.kind) {
    case 'command':
      if (asked.name === 'here') return here(desk, asked, who, asked.action, asked.given);
      return command(desk, asked, who, asked);
    case 'press':
      return press(desk, asked, who, asked.press);
    case 'suggest': {
      const found = await suggest(desk, who, asked);
      const fitting = found.filter(({ value }) => value.length <= limits.choiceName).slice(0, 25);
      return {
        suggest: fitting.map(({ value, label }) => ({ value, label: short(label, limits.choiceName) })),
      };
    }
    case 'strange':
      return word('too old');
    default:
      return asked satisfies never;
  }
}

/** Stands for a stranger, who can press one button only. */
const nobody = { classId: '', person: '' } as unknown as Who;

/** What somebody is told while too many others are answered: nothing was done, and it may be tried again. */
export function busy({ kind }: Asked): Answer {
  if (kind === 'ping') return { pong: true };
  return kind === 'suggest' ? { suggest: [] } : word('busy');
}

/** Answers an interaction; what goes wrong is answered in words. Nothing that anybody wrote is logged. */
export async function answer(desk: Desk, asked: Asked): Promise<Answer> {
  try {
    return await answerOf(desk, asked);
  } catch (why) {
    if (asked.kind === 'suggest') return { suggest: [] };
    if (why instanceof Fault && why.code !== 'disk' && why.code !== 'in use') {
      return { show: told(`${why.message}. ${why.remedy}`) };
    }
    const code = why instanceof Fault ? why.code : why instanceof Error ? why.name : 'unknown';
    desk.options.log.error({ code, kind: asked.kind }, 'an interaction was not taken');
    return { show: told(say('trouble')) };
  }
}
