import type { PracticeId } from './ids.js';
import type { Look } from './looks.js';
import type { Audience, Message } from './messages.js';

/** Names one message so that it can be replaced or withdrawn; unique in a class. */
export type MessageKey = string;

/** The practice that a message of a group's channel belongs to, where one runs; platforms keep a thread for each. */
export interface TalkOf {
  readonly practice: PracticeId;
  /** The passage's title, as staff wrote it. */
  readonly title: string;
}

/** How an event is told. `show` puts a look's answer before an audience when the event is told (the digest). */
export type Telling =
  | { readonly do: 'say'; readonly key: MessageKey; readonly message: Message; readonly talk?: TalkOf }
  | { readonly do: 'replace'; readonly key: MessageKey; readonly message: Message; readonly talk?: TalkOf }
  | { readonly do: 'withdraw'; readonly key: MessageKey; readonly audience: Audience }
  | { readonly do: 'show'; readonly key: MessageKey; readonly look: Look; readonly audience: Audience };
