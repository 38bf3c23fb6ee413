import { ComponentType, TextInputStyle } from 'discord.js';
import { writePressed } from '../custom-id.js';
import type { From } from '../read/interaction.js';
import { codeModal } from '../submitted-id.js';
import { say } from '../words.js';
import type { Answer, Desk } from './desk.js';
import { lookButton, told, word } from './show.js';

const putIn = () => ({ id: writePressed({ does: 'join' }), label: say('put in code'), main: true });

/** The form in which a slip's code is typed. */
export function codeForm(): Answer {
  return {
    modal: {
      custom_id: codeModal,
      title: say('come in'),
      components: [
        {
          type: ComponentType.Label,
          label: say('code label'),
          description: say('code hint'),
          component: {
            type: ComponentType.TextInput,
            custom_id: 'code',
            style: TextInputStyle.Short,
            required: true,
            max_length: 100,
          },
        },
      ],
    },
    instead: told(say('stranger'), [putIn()]),
  };
}

/** What a stranger is told. */
export function stranger(): Answer {
  return word('stranger', [putIn()]);
}

/** Ties somebody to the person of a slip or staff link. */
export async function join(desk: Desk, from: From, tenant: string, code: string): Promise<Answer> {
  const answer = await desk.house.join('discord', tenant, from.user, code);
  if ('refused' in answer) return { show: told(answer.refused, [putIn()]) };
  return { show: told(say('joined'), [lookButton('for you', 'for-you', true)]) };
}
