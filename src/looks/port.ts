import type { Judges } from '../../shared/judgements.js';
import type { SlashCommand } from '../../shared/slash-command.js';
import type { Instant } from '../../shared/time.js';
import type { Store } from '../store/store.js';

/** What looks need of the world beyond the class's state; nothing here changes anything but the record of who looked at an alarm's words. */
export interface LookPort {
  readonly store: Pick<
    Store,
    'events' | 'evidence' | 'sealedWords' | 'sealedLooks' | 'slipsOf' | 'secondKey' | 'stuck'
  >;
  /** For previews of passages. */
  readonly judges: Pick<Judges, 'read'>;
  /** A day and a time in the class's zone, in plain words; never a countdown. */
  readonly when: (at: Instant) => string;
  readonly commands: readonly SlashCommand[];
}
