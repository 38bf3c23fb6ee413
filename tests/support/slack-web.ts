import type { Json } from './slack-user.js';
import { liveIn, messageBreaches, viewBreaches } from './slack-limits.js';
import type { SlackRoom, SlackStandIn, StandingPost } from './slack-stand-in.js';

const bot = 'UBOT';

function checkMessage(slack: SlackStandIn, args: Json): void {
  slack.breaches.push(...messageBreaches(args), ...liveIn(args));
}

/** A reply stands under a post of the channel, or in a thread whose first post was deleted. */
function mayReply(room: SlackRoom, thread: string): boolean {
  return room.posts.some((one) => (one.ts === thread && one.thread === null) || one.thread === thread);
}

function inRoom(slack: SlackStandIn, args: Json): SlackRoom | string {
  const room = slack.rooms.get(String(args['channel']));
  if (!room) return 'channel_not_found';
  if (room.archived) return 'is_archived';
  return room.member ? room : 'not_in_channel';
}

/** Does what a call of the Web API asks for, as far as the channel asks. */
export function performCall(slack: SlackStandIn, method: string, args: Json, token: string): Json {
  const no = (error: string): Json => ({ ok: false, error });
  switch (method) {
    case 'auth.test':
      return { ok: true, team_id: slack.workspaces.get(token) ?? slack.team, user_id: bot, bot_id: 'B1' };
    case 'oauth.v2.access': {
      const agreed = slack.codes.get(String(args['code']));
      slack.codes.delete(String(args['code']));
      return agreed ?? no('invalid_code');
    }
    case 'conversations.info': {
      if (slack.lacking.has('channels:read')) return no('missing_scope');
      const room = slack.rooms.get(String(args['channel']));
      if (!room) return no('channel_not_found');
      const { id, archived, member, properties } = room;
      const channel = { id, name: `room-${id}`, is_archived: archived, is_member: member, properties };
      return { ok: true, channel };
    }
    case 'conversations.replies': {
      if (slack.lacking.has('channels:history')) return no('missing_scope');
      const room = inRoom(slack, args);
      if (typeof room === 'string') return no(room);
      const own = room.posts.filter(({ ts, thread }) => [ts, thread].includes(String(args['ts'])));
      if (own.length === 0) return no('thread_not_found');
      const from = Number(args['cursor'] ?? 0);
      const many = Math.min(Number(args['limit'] ?? 100), slack.pageOfReplies);
      const next = from + many < own.length ? String(from + many) : '';
      const messages = own.slice(from, from + many).map(shownPost);
      return { ok: true, messages, response_metadata: { next_cursor: next } };
    }
    case 'apps.connections.open':
      return { ok: true, url: `${slack.base.replace('http', 'ws')}/link` };
    case 'chat.postMessage': {
      const room = inRoom(slack, args);
      if (typeof room === 'string') return no(room);
      const thread = args['thread_ts'];
      if (typeof thread === 'string' && !mayReply(room, thread)) return no('thread_not_found');
      checkMessage(slack, args);
      const post = postOf(slack.ts(), args);
      room.posts.push(post);
      return { ok: true, channel: room.id, ts: post.ts };
    }
    case 'chat.update':
    case 'chat.delete': {
      const room = inRoom(slack, args);
      if (typeof room === 'string') return no(room);
      const at = room.posts.findIndex(({ ts }) => ts === args['ts']);
      if (at < 0) return no('message_not_found');
      if (method === 'chat.delete') room.posts.splice(at, 1);
      else {
        checkMessage(slack, args);
        room.posts[at] = { ...postOf(String(args['ts']), args), thread: room.posts[at]?.thread ?? null };
      }
      return { ok: true, channel: room.id, ts: args['ts'] };
    }
    case 'conversations.history': {
      if (slack.lacking.has('channels:history')) return no('missing_scope');
      const room = inRoom(slack, args);
      if (typeof room === 'string') return no(room);
      const withMarks = args['include_all_metadata'] === 'true' || args['include_all_metadata'] === true;
      const own = room.posts.filter(({ thread }) => thread === null);
      const newest = own.toReversed().slice(0, Number(args['limit'] ?? 100));
      const messages = newest.map(shownPost);
      return {
        ok: true,
        messages: withMarks ? messages : messages.map((one) => ({ ...one, metadata: undefined })),
      };
    }
    case 'views.open':
    case 'views.push':
    case 'views.update': {
      slack.breaches.push(...viewBreaches(args['view'] as Json), ...liveIn(args['view'] as Json));
      const users = [...slack.users.values()];
      if (method === 'views.update') {
        const owner = users.find((one) => one.views.some(({ id }) => id === args['view_id']));
        return owner
          ? owner.replaceView(String(args['view_id']), args['hash'], args['view'] as Json)
          : no('not_found');
      }
      const owner = users.find((one) => one.triggers.has(String(args['trigger_id'])));
      if (!owner || slack.triggersDie) return no('expired_trigger_id');
      return owner.stackView(String(args['trigger_id']), method === 'views.push', args['view'] as Json);
    }
    default:
      return no('unknown_method');
  }
}

function postOf(ts: string, args: Json): StandingPost {
  return {
    ts,
    user: bot,
    text: typeof args['text'] === 'string' ? args['text'] : '',
    blocks: (args['blocks'] as readonly Json[] | undefined) ?? [],
    metadata: (args['metadata'] as Json | undefined) ?? null,
    thread: typeof args['thread_ts'] === 'string' ? args['thread_ts'] : null,
  };
}

function shownPost({ ts, user, text, blocks, metadata, thread }: StandingPost): Json {
  return {
    type: 'message',
    ts,
    user,
    text,
    blocks,
    ...(thread === null ? {} : { thread_ts: thread }),
    ...(metadata ? { metadata } : {}),
  };
}
