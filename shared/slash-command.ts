import type { LookName } from './looks.js';
import type { MoveName } from './moves.js';
import type { Role } from './roles.js';

/** Where suggestions for an option come from while it is typed. */
export type SuggestionSource = 'passages' | 'groups' | 'people' | 'pupils' | 'stops' | 'held';

export interface CommandOption {
  /** The move's or look's field that it fills; a-z and hyphens, at most 32 characters. */
  readonly name: string;
  /** What it is, at most 100 characters. */
  readonly words: string;
  readonly kind: 'line' | 'long text' | 'file' | 'whole number' | 'pick';
  readonly required: boolean;
  /** For `pick` without a source: the words that can be picked. */
  readonly choices?: readonly string[];
  /** Suggestions carry the id behind a label; what is typed by hand is matched against labels. Stops are typed counted from 1. */
  readonly from?: SuggestionSource;
}

/** One thing that a slash command does: the move that it makes or the look that it takes. */
export interface CommandAction {
  readonly name: string;
  readonly words: string;
  readonly options: readonly CommandOption[];
  readonly who: readonly Role[];
  readonly does:
    | { readonly move: MoveName; readonly fixed?: Readonly<Record<string, string>> }
    | { readonly look: LookName; readonly fixed?: Readonly<Record<string, string>> }
    /** Slips and staff links are secrets, so they are neither moves nor looks: the house's doors make and revoke them. */
    | { readonly door: 'make-slip' | 'make-sheet' | 'revoke-slips' };
}

/** A slash command: plain data, one file each in commands/; typed as "/name action option:value". */
export interface SlashCommand {
  readonly name: string;
  readonly words: string;
  readonly actions: readonly CommandAction[];
}
