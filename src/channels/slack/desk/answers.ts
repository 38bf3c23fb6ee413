import type { RespondFn } from '@slack/bolt';
import type { ModalView } from '@slack/types';
import type { Message } from '../../../../shared/messages.js';
import { buttonBlocks } from '../render/choices.js';
import { renderContext } from '../render/context.js';
import { pageOf, type Payload } from '../render/payload.js';
import { answerView, wordsView } from '../render/view.js';
import { plain } from '../plain.js';
import { say } from '../words.js';
import { tried, type Desk, type Shown } from './desk.js';

/** A private message: only who acted sees it, and nothing in it is parsed. */
export type Private = Payload & { readonly response_type: 'ephemeral'; readonly mrkdwn: false };

function privately(payload: Payload): Private {
  return { ...payload, response_type: 'ephemeral', mrkdwn: false };
}

/** Some words of our own as a private message. */
export function privateWords(text: string): Private {
  return privately(pageOf([messageOf(text)], null, 0));
}

/** Words of our own as a message. */
export function messageOf(text: string): Message {
  return { audience: { to: 'staff', group: null }, summary: text, blocks: [] };
}

/** The messages of an answer; one that says nothing says at least that it is done. */
export function messagesOf({ reply }: Shown): readonly Message[] {
  if (reply.messages.length > 0) return reply.messages;
  return [messageOf(reply.done ? say('kept') : say('not kept'))];
}

/** An answer as a private message. */
export function privateAnswer(shown: Shown, page = 0): Private {
  const payload = pageOf(messagesOf(shown), shown.look, page);
  const pressed = (shown.presses ?? []).map((one) => ({ ...one, main: false }));
  let names = 0;
  const newName = (): string => {
    names += 1;
    return `own${names}`;
  };
  const buttons = buttonBlocks(pressed, { ...renderContext(null), newName });
  return privately({ ...payload, blocks: [...payload.blocks, ...buttons] });
}

/** A refusal in words that needs no move. */
export function refused(text: string): Shown {
  return { reply: { done: false, messages: [messageOf(text)] }, look: null };
}

/** An answer as a view. */
export function viewOf(shown: Shown, page = 0): ModalView {
  return answerView(messagesOf(shown), shown.look, page);
}

/** An answer in plain words, for the one line that a form's field can show. */
export function lineOf({ reply }: Shown): string {
  const text = reply.messages
    .map(({ summary }) => plain(summary))
    .join(' ')
    .trim();
  return text === '' ? say('not kept') : text;
}

/** Sends a private message by an update's own address. `replace` stands it in place of the private one that was pressed. */
export function respondWith(
  desk: Desk,
  respond: RespondFn | undefined,
  message: Private,
  replace: boolean,
): Promise<boolean> {
  return tried(desk, 'respond', async () => {
    if (!respond) throw new Error('no address to respond to');
    const response = (await respond({
      ...message,
      blocks: [...message.blocks],
      replace_original: replace,
    })) as { readonly ok?: boolean } | undefined;
    if (response?.ok === false) throw new Error('refused');
  });
}

/** Words of our own as a view. */
export function viewWords(text: string): ModalView {
  return wordsView(text);
}
