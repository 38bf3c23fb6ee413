import type { Look } from './looks.js';
import type { Audience, Message } from './messages.js';

/** Names one message so that it can be replaced or withdrawn; unique in a class. */
export type MessageKey = string;

/** How an event is told. `show` puts a look's answer before an audience when the event is told (the digest). */
export type Telling =
  | { readonly do: 'say'; readonly key: MessageKey; readonly message: Message }
  | { readonly do: 'replace'; readonly key: MessageKey; readonly message: Message }
  | { readonly do: 'withdraw'; readonly key: MessageKey; readonly audience: Audience }
  | { readonly do: 'show'; readonly key: MessageKey; readonly look: Look; readonly audience: Audience };
