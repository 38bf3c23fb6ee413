import { mayLook, type LookName } from '../../../../shared/looks.js';
import { plain } from '../render/plain.js';
import { titled, withoutStanding } from '../render/standing.js';
import { say, type RoomWord } from '../words.js';
import type { Ask, Page } from './page.js';
import { contextFor, FeedView, Messages, Region } from './region.js';

const titles: Readonly<Record<LookName, RoomWord>> = {
  turn: 'my page',
  step: 'step title',
  'for-you': 'for you',
  'where-are-we': 'where',
  passages: 'passages',
  preview: 'preview',
  'preview-text': 'preview',
  waiting: 'waiting',
  alarms: 'alarms',
  'alarm-words': 'alarm words',
  digest: 'digest',
  words: 'words',
  roster: 'roster',
  settings: 'settings',
  'morning-list': 'today',
  'at-the-table': 'table',
  post: 'post',
  help: 'help',
};

/** Looks that are made to be printed. */
const printed: readonly LookName[] = ['digest', 'morning-list', 'roster', 'preview'];

/** The page for somebody who may not see what they asked for. */
export function notYours(): Page {
  return {
    title: say('not yours title'),
    content: (
      <>
        <p>{say('not yours')}</p>
        <p>
          <a class="button" href="/">
            {say('back to my page')}
          </a>
        </p>
      </>
    ),
    status: 403,
  };
}

/** The page of one look; for who waits for an adult's eyes the notes for staff stand below. */
export async function lookPage(
  ask: Ask,
  look: LookName,
  fields: Readonly<Record<string, string>>,
): Promise<Page> {
  const { tools, visitor } = ask;
  const { profile } = visitor;
  if (!mayLook[look].includes(profile.role)) return notYours();
  const reply = await tools.house.look(profile, look, fields);
  const notes =
    look === 'waiting'
      ? (await tools.newest(profile)).filter(({ message }) => message.audience.to === 'staff')
      : null;
  const { title, messages } = titled(
    profile.role === 'pupil' ? reply.messages.map(withoutStanding) : reply.messages,
  );
  const tray =
    look === 'for-you'
      ? (await tools.newest(profile)).filter(({ message }) => message.audience.to === 'person').reverse()
      : [];
  return {
    title: title === null ? say(titles[look]) : plain(title),
    status: reply.done ? 200 : 404,
    content: (
      <>
        <Region name={look} quiet={look === 'step' || !reply.done}>
          <Messages messages={messages} context={contextFor(ask, look, 2, { title })} />
          {tray.length === 0 ? null : (
            <FeedView items={tray} context={contextFor(ask, 'tray', 2, { mains: false })} />
          )}
        </Region>
        {printed.includes(look) && reply.done ? <p class="no-print" data-print={say('print')} /> : null}
        {notes === null ? null : (
          <Region name="notes" title={say('staff notes')}>
            {notes.length === 0 ? (
              <p>{say('no notes')}</p>
            ) : (
              <FeedView items={[...notes].reverse()} context={contextFor(ask, 'notes', 3)} />
            )}
          </Region>
        )}
        {profile.role === 'pupil' ? (
          <p>
            <a class="button" href="/">
              {say('back to my page')}
            </a>
          </p>
        ) : null}
      </>
    ),
  };
}

/** The talk: a pupil's group, or for a tutor all groups. */
export async function talkPage(ask: Ask): Promise<Page> {
  const { profile } = ask.visitor;
  if (!mayLook.turn.includes(profile.role) && !mayLook.waiting.includes(profile.role)) return notYours();
  const talk = (await ask.tools.newest(profile)).filter(({ message }) => message.audience.to === 'channel');
  return {
    title: say('talk'),
    content: (
      <Region name="talk">
        {talk.length === 0 ? (
          <p>{say('no talk')}</p>
        ) : (
          <FeedView items={talk} context={contextFor(ask, 'talk', 2, { mains: false })} />
        )}
      </Region>
    ),
  };
}
