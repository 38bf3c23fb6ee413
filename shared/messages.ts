import type { GroupId, PersonId } from './ids.js';

/** A stretch of text; never markup, so that each renderer owns its escaping. */
export interface Span {
  readonly text: string;
  readonly strong?: true;
  /** BCP 47, where the text is in another language. */
  readonly lang?: string;
}
export type Prose = readonly Span[];

/** What pressing something does: a move or a look by name, with flat string arguments, so that every channel can carry it. */
export interface Action {
  readonly kind: 'move' | 'look';
  readonly name: string;
  readonly args: Readonly<Record<string, string>>;
}

export interface Choice {
  readonly label: string;
  readonly action: Action;
  /** The one next thing to do; at most one a message. */
  readonly main?: true;
}

export interface FieldOption {
  readonly value: string;
  readonly label: string;
}

/** A labelled field of a form. `sentence` and `word` are tapped in `source` and give "start-end" offsets; `text` is typed. */
export type Field =
  | {
      readonly kind: 'line' | 'text';
      readonly name: string;
      readonly label: string;
      readonly hint?: string;
      readonly value?: string;
      readonly required: boolean;
      readonly max: number;
    }
  | {
      readonly kind: 'pick';
      readonly name: string;
      readonly label: string;
      readonly options: readonly FieldOption[];
      readonly required: boolean;
      readonly value?: string;
      readonly many?: true;
    }
  | {
      readonly kind: 'sentence' | 'word';
      readonly name: string;
      readonly label: string;
      readonly source: string;
      /** Offsets that can be tapped. */
      readonly ranges: readonly { readonly start: number; readonly end: number }[];
      readonly required: boolean;
    }
  | { readonly kind: 'file'; readonly name: string; readonly label: string; readonly required: boolean };

/** A picture as data, drawn by the renderer; `alternative` is read aloud in its place. */
export interface Picture {
  readonly kind: 'bars' | 'code';
  readonly alternative: string;
  readonly data: readonly { readonly label: string; readonly value: number; readonly of?: number }[] | string;
}

export type Block =
  | { readonly type: 'heading'; readonly text: string }
  | { readonly type: 'prose'; readonly prose: Prose }
  /** The words of a text or a person, shown apart. */
  | { readonly type: 'quotation'; readonly text: string; readonly by: string | null; readonly reading?: true }
  | { readonly type: 'list'; readonly items: readonly Prose[] }
  /** A figure with its words, for instance "met 3 of 5". */
  | {
      readonly type: 'measure';
      readonly label: string;
      readonly value: number;
      readonly of: number | null;
      readonly words: string;
    }
  | { readonly type: 'picture'; readonly picture: Picture }
  | { readonly type: 'choices'; readonly prompt: string | null; readonly choices: readonly Choice[] }
  | {
      readonly type: 'form';
      readonly title: string;
      readonly action: Action;
      readonly fields: readonly Field[];
      readonly submit: string;
      /** The one next thing to do; at most one a message. */
      readonly main?: true;
    };

/** Whom a message is for: a group's channel (pupils and staff), one person, or the staff of the class. */
export type Audience =
  | { readonly to: 'channel'; readonly group: GroupId }
  | { readonly to: 'person'; readonly person: PersonId }
  | { readonly to: 'staff'; readonly group: GroupId | null };

/** What anybody is shown. `summary` is plain text for notifications and screen readers. */
export interface Message {
  readonly audience: Audience;
  readonly summary: string;
  readonly blocks: readonly Block[];
}
