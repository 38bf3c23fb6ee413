import type { JSX } from 'hono/jsx/jsx-runtime';
import type { FeedItem, House, Reply, Who } from '../../../../shared/channel.js';
import type { RoomOptions } from '../options.js';
import type { Kept } from '../render/context.js';
import type { SignedIn } from '../visitor.js';

/** What pages are made from. */
export interface PageTools {
  readonly house: House;
  readonly options: RoomOptions;
  readonly newest: (who: Who) => Promise<readonly FeedItem[]>;
}

/** A page that somebody asked for; `kept` is what was typed before a refusal. */
export interface Ask {
  readonly tools: PageTools;
  readonly visitor: SignedIn;
  readonly url: URL;
  readonly kept: Kept | null;
  readonly found: () => void;
  /** What was just answered; it stands above the page. */
  readonly answer: Reply | null;
}

/** What stands in the frame. */
export interface Page {
  readonly title: string;
  readonly content: JSX.Element;
  readonly status?: 200 | 403 | 404 | 422;
  /** The newest number of the feed that the page shows, so that the script knows whether it missed something. */
  readonly seq?: number;
  /** Where to go instead. */
  readonly instead?: string;
}

/** The address as a path of our own, with its query. */
export function backOf(url: URL): string {
  return `${url.pathname}${url.search}`;
}
