import type { ClassId, GroupId, PersonId } from './ids.js';
import type { Audience, FieldOption, Message } from './messages.js';
import type { Role } from './roles.js';
import type { SuggestionSource } from './slash-command.js';
import type { Given, Register } from './strategies.js';
import type { MessageKey, Telling } from './tellings.js';
import type { Instant } from './time.js';

/** A person of a class, as a channel knows them once they are signed in or bound. */
export interface Who {
  readonly classId: ClassId;
  readonly person: PersonId;
}

/** What a channel may show about whoever is there. */
export interface Profile extends Who {
  readonly nickname: string;
  readonly role: Role;
  readonly register: Register;
  readonly group: GroupId | null;
  readonly className: string;
}

/** A move on its way in: `id` is the platform's update id (the room makes one for each form it shows); seen twice, it is answered the same and done once. */
export interface Update {
  readonly id: string;
  readonly who: Who;
  readonly move: string;
  readonly fields: Readonly<Record<string, string | undefined>>;
  readonly given?: Given;
}

/** What who acted is told. `done` false is a refusal: nothing changed and nothing is lost. */
export interface Reply {
  readonly done: boolean;
  readonly messages: readonly Message[];
  /** Of a refusal: the whole error, for programs and logs of a rehearsal; a pupil's message holds only what to do now. */
  readonly why?: string;
}

/** A stored message of a feed; `seq` grows. A withdrawn one is left out. */
export interface FeedItem {
  readonly seq: number;
  readonly key: MessageKey;
  readonly at: Instant;
  readonly message: Message;
}

/** A slash command as typed or picked: "/passages set passage:… group:…". */
export interface TypedCommand {
  readonly name: string;
  readonly action: string;
  readonly options: Readonly<Record<string, string | undefined>>;
}

/** Beside a slip or a link something more is asked for: to give it, or to choose it where it isn't set yet. */
export interface Asked {
  readonly asks: 'pictures' | 'passphrase';
  readonly choose: boolean;
  /** What was wrong with the answer before, null where there was none. */
  readonly why: string | null;
}

/** What a channel may ask of the app; every answer holds only what that person may see. Refusals of looks and commands come as a reply with `done` false; broken input throws `Fault`. */
export interface House {
  move(update: Update): Promise<Reply>;
  look(who: Who, look: string, fields: Readonly<Record<string, string | undefined>>): Promise<Reply>;
  command(who: Who, updateId: string, command: TypedCommand): Promise<Reply>;
  /** Up to 25 suggestions for an option while it is typed. */
  suggest(who: Who, source: SuggestionSource, typed: string): Promise<readonly FieldOption[]>;
  /** Messages of the person's channel, tray and, for staff, staff side, oldest first, after a sequence number. */
  feed(who: Who, after: number): Promise<readonly FeedItem[]>;
  /** Calls back when something new may be shown to this person; the answer ends it. */
  listen(who: Who, changed: () => void): () => void;
  profile(who: Who): Promise<Profile | null>;

  /** Opens a session for a slip's or staff link's secret, asks for more, or says why not. `from` is whose guesses are counted (a network address); `second` answers what was asked: three pictures' names, or a passphrase. */
  signIn(
    secret: string,
    from: string,
    second?: string,
  ): Promise<{ readonly session: string; readonly who: Who } | { readonly refused: string } | Asked>;
  /** "Tell a grown-up" from the door, by the pupil of a slip, before anything more is asked. */
  tellGrownUp(
    secret: string,
    from: string,
    updateId: string,
    text: string,
  ): Promise<Reply | { readonly refused: string }>;
  /** Sets a pupil's three pictures by their own wish; the reply says so, or why not. */
  choosePictures(who: Who, pictures: string): Promise<Reply>;
  /** Whether somebody is asked for more than their slip or link. */
  hasSecondKey(who: Who): Promise<boolean>;
  session(id: string): Promise<Who | null>;
  signOut(id: string): Promise<void>;
  /** Makes a slip or staff link for a person of the class, revoking older ones: the secret (shown once), the link, and until when it is good. */
  makeSlip(
    by: Who,
    person: PersonId,
  ): Promise<{ readonly secret: string; readonly link: string; readonly until: Instant }>;
  now(): Instant;

  /** Who somebody of a platform is with us; null for a stranger. */
  identify(channel: 'discord' | 'slack', tenant: string, user: string): Promise<Who | null>;
  /** Ties somebody of a platform to the person of a slip or staff link, or says why not. */
  join(
    channel: 'discord' | 'slack',
    tenant: string,
    user: string,
    code: string,
  ): Promise<Who | { readonly refused: string }>;
  /** Ties a place of a platform to a group's channel or to the staff of the class; only for who may run the class. */
  bindPlace(
    who: Who,
    channel: 'discord' | 'slack',
    tenant: string,
    room: string,
    audience: Audience,
  ): Promise<Reply>;
}

/** One message on its way to a platform. A look that is told comes with its answer's messages. */
export interface Delivery {
  readonly tenant: string;
  readonly room: string;
  readonly telling: Exclude<Telling, { do: 'show' }>;
  /** What the platform calls the message of the same key that was sent before, for replace and withdraw. */
  readonly before: string | null;
  /** What the platform calls the first message of the same practice in this room; left out where there is none yet. */
  readonly opening?: string;
  /** Sending was begun before by a process that ended, and nobody knows whether it arrived. */
  readonly again?: true;
  /** The same for every try of this message; 25 characters. */
  readonly nonce: string;
}

/** What became of a delivery: sent (with the platform's id, and a word that staff need to hear once, if any), to be tried again at a time, or stuck until a person acts. */
export type Delivered =
  | { readonly sent: string | null; readonly tell?: string }
  | { readonly again: Instant; readonly why: string }
  | { readonly stuck: string };

/** A place of a platform and who reads there. */
export interface BoundPlace {
  readonly tenant: string;
  readonly room: string;
  readonly audience: Audience;
}

/** One thing that was looked at: fine, or what to mend and how. */
export interface Finding {
  readonly fine: boolean;
  readonly words: string;
}

/** A place where people are: the room, Discord, Slack. */
export interface Channel {
  readonly name: 'room' | 'discord' | 'slack';
  /** Opens for updates; resolves when ready. */
  start(house: House): Promise<void>;
  /** Sends, replaces or withdraws one message; never throws for what a platform does. The room has none: it shows what is stored. */
  deliver?(delivery: Delivery): Promise<Delivered>;
  /** Whether a message that may have been sent before a crash stands on the platform: its id, null if it doesn't, 'unknown' where history can't be read. */
  stands?(delivery: Delivery): Promise<{ readonly id: string } | null | 'unknown'>;
  /** Looks at what the platform grants: token, scopes, permissions in the bound places, clock. Needs no `start`; never throws for what a platform does. */
  check?(places: readonly BoundPlace[], now: Instant): Promise<readonly Finding[]>;
  stop(): Promise<void>;
}
