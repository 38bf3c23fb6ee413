import type { FieldOption } from '../../../../shared/messages.js';
import type { RenderContext } from '../render/context.js';
import { Hidden } from '../render/hidden.js';
import { plain } from '../render/plain.js';
import { say } from '../words.js';

/** One button for each group, below what pressing it ends. */
export function SlipForms({
  groups,
  context,
}: {
  readonly groups: readonly FieldOption[];
  readonly context: RenderContext;
}) {
  return (
    <div class="no-print">
      <p class="prose">{say('slips why')}</p>
      {groups.length === 0 ? <p>{say('slips none')}</p> : null}
      <ul class="choices">
        {groups.map(({ value, label }) => (
          <li>
            <form method="post" action="/command" class="choice">
              <Hidden context={context} args={{ _command: 'roster', _action: 'sheet', group: value }} />
              <button type="submit" class="button">
                {say('slips make', { group: plain(label) })}
              </button>
            </form>
          </li>
        ))}
      </ul>
    </div>
  );
}
