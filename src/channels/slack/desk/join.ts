import { look } from './look-message.js';
import type { Desk, Shown, Slacker } from './desk.js';
import { say } from '../words.js';
import { refused } from './answers.js';

/** The code of "/join code:K7QM-2RTX-9P", with or without its name. */
function codeIn(text: string): string {
  return text
    .replace(/^code:\s*/iu, '')
    .replace(/^["“”]|["“”]$/gu, '')
    .trim();
}

/** Ties somebody of Slack to the person of a slip or staff link. */
export async function join(desk: Desk, { tenant, user }: Slacker, text: string): Promise<Shown> {
  const code = codeIn(text);
  if (code === '') return refused(say('join how'));
  const joined = await desk.house.join('slack', tenant, user, code);
  if ('refused' in joined) return refused(joined.refused);
  const profile = await desk.house.profile(joined);
  const words = say('joined', { nickname: profile?.nickname ?? '', class: profile?.className ?? '' });
  const page = profile?.role === 'pupil' ? look(say('my page'), 'turn') : [];
  return {
    reply: {
      done: true,
      messages: [
        {
          audience: { to: 'person', person: joined.person },
          summary: words,
          blocks: [{ type: 'prose', prose: [{ text: words }] }, ...page],
        },
      ],
    },
    look: null,
  };
}
