import type { Block, Message } from '../../shared/messages.js';
import type { Post } from '../practice/state.js';
import { digestOf } from '../progress/digest.js';
import { answer, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, list, look, move, prose, quotation, typed } from './blocks.js';
import { notReady } from './not-ready.js';
import { findingWords, heldPosts, staffBy, staffQuotation } from './staff-posts.js';

/** Whether a post waits only because everything does. */
function isSafe(post: Post): boolean {
  return post.stage.stage === 'held' && post.stage.why === 'everything' && post.findings.length === 0;
}

function isAlarm(post: Post): boolean {
  return post.stage.stage === 'held' && post.stage.why === 'alarm';
}

function safeOnes(asked: Asked, posts: readonly Post[], main: boolean): readonly Block[] {
  if (posts.length === 0) return [];
  const all = posts.map(({ id }) => id).join(',');
  return [
    heading(staff('safe title', { many: posts.length })),
    ...choices(null, [
      choice(staff('publish all', { many: posts.length }), move('release', { posts: all }), main),
    ]),
    ...posts.flatMap((post) => [
      staffQuotation(asked.state, post),
      ...choices(null, [
        choice(staff('publish one'), move('release', { posts: post.id })),
        choice(staff('look closer'), look('post', { post: post.id })),
      ]),
    ]),
  ];
}

function doubtfulOne(asked: Asked, post: Post): readonly Block[] {
  if (post.stage.stage !== 'held') return [];
  const reasons = [
    staff(`held ${post.stage.why}`),
    ...post.findings.map((finding) => findingWords(post, finding)),
  ];
  return [
    staffQuotation(asked.state, post),
    ...list([...new Set(reasons)]),
    ...choices(staff('waits since', { when: asked.port.when(post.stage.since) }), [
      choice(staff('publish one'), move('release', { posts: post.id })),
      choice(staff('remove'), move('remove', { post: post.id })),
      choice(staff('look closer'), look('post', { post: post.id })),
    ]),
    form(
      staff('send back'),
      move('send-back', { post: post.id }),
      [typed('text', 'note', staff('note to pupil'), { max: 400 })],
      staff('send back'),
    ),
  ];
}

/** Alarms that nobody has taken: then they are the one next thing, before any post. */
function openAlarms({ state }: Asked): number {
  return Object.values(state.alarms).filter(({ acknowledgedBy }) => acknowledgedBy === null).length;
}

/** Words of an alarm stand under "Alarms" alone; here only that something waits. */
function alarmed(asked: Asked, posts: readonly Post[]): readonly Block[] {
  const open = openAlarms(asked);
  if (open === 0 && posts.length === 0) return [];
  return [
    heading(staff('alarms first')),
    prose(staff('alarms open', { many: open })),
    ...list(posts.map((post) => staffBy(asked.state, post))),
    ...choices(null, [choice(staff('see alarms'), look('alarms'), open > 0)]),
  ];
}

/** The small weekly check on the judges, and meanings that nobody has confirmed. */
async function alsoWaiting(asked: Asked): Promise<readonly Block[]> {
  const rows = await asked.port.store.evidence({ classId: asked.state.id });
  const digest = digestOf({ state: asked.state, group: null, rows, at: asked.at });
  const check = digest.check.filter(({ done }) => !done);
  const words = digest.words.filter(({ meaning }) => meaning === null);
  return [
    ...(check.length === 0
      ? []
      : [
          heading(staff('check title')),
          prose(staff('check why')),
          ...check.flatMap(({ post, text, nickname, why, level }) => [
            quotation(text, nickname),
            ...choices(staff(`check ${why}`, { level: level ?? 'not given' }), [
              choice(staff('look closer'), look('post', { post })),
            ]),
          ]),
        ]),
    ...(words.length === 0
      ? []
      : choices(staff('words wait', { many: words.length }), [choice(staff('see words'), look('words'))])),
  ];
}

const platforms = { room: 'the room', discord: 'Discord', slack: 'Slack' } as const;

/** Places of a platform that are silent until somebody mends what is in the way. */
async function stuckOnes(asked: Asked): Promise<readonly Block[]> {
  const stuck = await asked.port.store.stuck(asked.state.id);
  if (stuck.length === 0) return [];
  return [
    heading(staff('stuck title', { many: stuck.length })),
    ...list(
      stuck.map(({ place, at, why }) =>
        staff('stuck one', { platform: platforms[place.channel], when: asked.port.when(at), why }),
      ),
    ),
    prose(staff('stuck what to do')),
  ];
}

/** What waits for an adult: alarms, then messages that are stuck, doubtful posts with their reasons, safe ones on one button, then the week's check. */
export async function waiting(asked: Asked): Promise<readonly Message[]> {
  const posts = heldPosts(asked.state);
  const alarms = posts.filter(isAlarm);
  const safe = posts.filter((post) => isSafe(post));
  const doubtful = posts.filter((post) => !isSafe(post) && !isAlarm(post));
  const title = posts.length === 0 ? staff('nothing waits') : staff('waiting title', { many: posts.length });
  return [
    answer(asked, title, [
      heading(title),
      ...notReady(asked),
      ...alarmed(asked, alarms),
      ...(await stuckOnes(asked)),
      ...(doubtful.length === 0 ? [] : [heading(staff('doubtful title', { many: doubtful.length }))]),
      ...doubtful.flatMap((post) => doubtfulOne(asked, post)),
      ...safeOnes(asked, safe, openAlarms(asked) === 0),
      ...(await alsoWaiting(asked)),
    ]),
  ];
}
