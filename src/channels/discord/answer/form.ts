import { createHash } from 'node:crypto';
import type { Who } from '../../../../shared/channel.js';
import { Fault } from '../../../../shared/fault.js';
import { hashOf, writePressed } from '../custom-id.js';
import { fetchText } from '../read/fetch-text.js';
import type { From, Given } from '../read/interaction.js';
import { valueOf } from '../read/tapped.js';
import { fieldsOf } from '../render/modal.js';
import { readSubmitted, type Submitted } from '../submitted-id.js';
import { say } from '../words.js';
import { showReply } from './act.js';
import { runCommand } from './command.js';
import type { Answer, Desk, ShownForm } from './desk.js';
import { join } from './join.js';
import { findForm } from './press.js';
import { lookButton, refusalWords, shown, told, word } from './show.js';

type Texts = Readonly<Record<string, string>>;
type OfLook = Extract<Submitted, { form: 'of a look' }>;

/** The same form sent twice, as it stood, is done once; sent again with other words it is another. */
function formId(opening: string, texts: Texts): string {
  const pairs = Object.entries(texts).toSorted(([a], [b]) => (a < b ? -1 : 1));
  return `discord:form:${opening}:${createHash('sha256').update(JSON.stringify(pairs)).digest('base64url').slice(0, 16)}`;
}

/** What wasn't taken is kept, and stands in the form when it is opened again. */
function notTaken(desk: Desk, from: From, { form, origin }: ShownForm, texts: Texts, why: string): Answer {
  const hash = hashOf(form.action);
  desk.typed.keep(`${from.user}|${hash}`, texts);
  const again = {
    id: writePressed({ does: 'open', hash, page: 0, origin }),
    label: say('open it'),
    main: true,
  };
  return { show: told(why, [again]) };
}

/** The fields of one sent part, what had to be typed turned into what it stands for; null where that isn't there. */
async function readFields(
  desk: Desk,
  { form }: ShownForm,
  page: number,
  given: Given,
): Promise<Texts | null> {
  const texts: Record<string, string> = {};
  for (const field of fieldsOf(form)[page] ?? []) {
    const file = field.kind === 'file' ? given.files[field.name] : undefined;
    if (file !== undefined) texts[field.name] = await fetchText(file, desk.options.api);
    const typed = given.texts[field.name] ?? '';
    if (field.kind === 'file' || typed === '') continue;
    const value = valueOf(field, typed);
    if (value === null) return null;
    texts[field.name] = value;
  }
  return texts;
}

async function sendForm(
  desk: Desk,
  from: From,
  who: Who,
  sent: OfLook,
  found: ShownForm,
  texts: Texts,
): Promise<Answer> {
  const { action } = found.form;
  const fields = { ...action.args, ...texts };
  const reply =
    action.kind === 'look'
      ? await desk.house.look(who, action.name, fields)
      : await desk.house.move({ id: formId(sent.opening, fields), who, move: action.name, fields });
  if (!reply.done) return notTaken(desk, from, found, texts, refusalWords(reply));
  desk.typed.drop(`${from.user}|${sent.hash}`);
  return action.kind === 'look'
    ? shown(desk, from, reply.messages, { ...action, args: fields })
    : showReply(desk, from, who, reply);
}

async function formOfLook(desk: Desk, from: From, who: Who, sent: OfLook, given: Given): Promise<Answer> {
  const kept = desk.forms.find(`${from.user}|${sent.hash}`);
  const found = kept ?? (await findForm(desk, from, who, sent.hash, sent.origin).catch(() => undefined));
  if (found === null || found === undefined) {
    const lost = Object.values(given.texts).filter((text) => text !== '');
    const way = [lookButton('for you', 'for-you', true)];
    const words = say(found === null ? 'too old' : 'trouble');
    return { show: told(`${words} ${say('you wrote')}`, way, lost) };
  }
  const before = sent.page === 0 ? {} : (desk.typed.find(`${from.user}|${sent.hash}`) ?? {});
  try {
    const own = await readFields(desk, found, sent.page, given);
    if (own === null) return notTaken(desk, from, found, { ...before, ...given.texts }, say('not there'));
    const texts = { ...before, ...own };
    if (sent.page + 1 >= fieldsOf(found.form).length)
      return await sendForm(desk, from, who, sent, found, texts);
    desk.typed.keep(`${from.user}|${sent.hash}`, texts);
    const next = { does: 'open', hash: sent.hash, page: sent.page + 1, origin: found.origin } as const;
    return { show: told(say('another step'), [{ id: writePressed(next), label: say('go on'), main: true }]) };
  } catch (why) {
    const words = why instanceof Fault ? `${why.message}. ${why.remedy}` : say('trouble');
    if (!(why instanceof Fault)) {
      desk.options.log.error({ code: why instanceof Error ? why.name : 'unknown' }, 'a form was not taken');
    }
    return notTaken(desk, from, found, { ...before, ...given.texts }, words);
  }
}

/** Answers a form that was sent. */
export async function formSent(
  desk: Desk,
  from: From,
  who: Who | null,
  id: string,
  given: Given,
): Promise<Answer> {
  const sent = readSubmitted(id);
  if (sent?.form === 'code') return join(desk, from, from.tenant ?? '', given.texts['code'] ?? '');
  if (sent === null || who === null) return word('too old', [lookButton('for you', 'for-you', true)]);
  if (sent.form === 'of a look') return formOfLook(desk, from, who, sent, given);
  const before = desk.commands.find(`${from.user}|${sent.opening}`)?.options ?? {};
  const options = { ...before, ...given.texts };
  const command = { name: sent.name, action: sent.action, options };
  return runCommand(desk, from, who, command, formId(sent.opening, given.texts));
}
