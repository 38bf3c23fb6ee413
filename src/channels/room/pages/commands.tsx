import type { Role } from '../../../../shared/roles.js';
import type { CommandAction, SlashCommand } from '../../../../shared/slash-command.js';
import { FieldView } from '../render/field.js';
import { Hidden } from '../render/hidden.js';
import { plain } from '../render/plain.js';
import { say } from '../words.js';
import { fieldOf } from './command-fields.js';
import { notYours } from './look.js';
import type { Ask, Page } from './page.js';
import { contextFor } from './region.js';

/** The commands of a role, each with the actions that it may do. */
function commandsOf(all: readonly SlashCommand[], role: Role): readonly SlashCommand[] {
  return all
    .map((command) => ({ ...command, actions: command.actions.filter(({ who }) => who.includes(role)) }))
    .filter(({ actions }) => actions.length > 0);
}

function Typed({ ask }: { readonly ask: Ask }) {
  const context = contextFor(ask, 'typed');
  const id = context.newName();
  const kept =
    ask.kept?.kind === 'command' && ask.kept.name === 'typed' ? ask.kept.fields['line'] : undefined;
  if (kept !== undefined) ask.found();
  return (
    <form
      method="post"
      action="/command"
      class="form"
      enctype="multipart/form-data"
      aria-label={say('type a command')}
      {...(kept === undefined ? {} : { id: 'kept' })}
    >
      <Hidden context={context} args={{}} />
      <div class="field">
        <label for={id}>{say('type a command')}</label>
        <p class="hint" id={`${id}-hint`}>
          {say('type hint')}
        </p>
        <textarea
          id={id}
          name="line"
          rows={2}
          required
          maxlength={262_144}
          autocomplete="off"
          spellcheck={false}
          aria-describedby={`${id}-hint`}
        >
          {`\n${plain(kept ?? '')}`}
        </textarea>
      </div>
      <button type="submit" class="button main">
        {say('do command')}
      </button>
    </form>
  );
}

/** All slash commands of the role, to type or to pick. */
export function commandsPage(ask: Ask): Page {
  const { role } = ask.visitor.profile;
  if (role === 'pupil') return notYours();
  return {
    title: say('commands'),
    content: (
      <>
        <Typed ask={ask} />
        <h2>{say('all commands')}</h2>
        {commandsOf(ask.tools.options.slashCommands, role).map((command) => (
          <section class="command">
            <h3>
              /{command.name}: {command.words}
            </h3>
            <ul class="command-actions">
              {command.actions.map((action) => (
                <li>
                  <a href={`/commands/${command.name}/${action.name}`}>
                    <span class="command-name">{action.name}</span>
                    {action.words}
                  </a>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </>
    ),
  };
}

/** Finds an action that a role may do. */
export function actionFor(
  all: readonly SlashCommand[],
  role: Role,
  name: string,
  action: string,
): CommandAction | null {
  const found = commandsOf(all, role).find((command) => command.name === name);
  return found?.actions.find((one) => one.name === action) ?? null;
}

/** The form of one command, made from its data. */
export async function commandPage(ask: Ask, name: string, actionName: string): Promise<Page | null> {
  const { profile } = ask.visitor;
  const action = actionFor(ask.tools.options.slashCommands, profile.role, name, actionName);
  if (action === null) return null;
  const context = contextFor(ask, 'command');
  const fields = await Promise.all(
    action.options.map((option) => fieldOf(ask.tools.house, profile, action, option)),
  );
  const kept =
    ask.kept?.kind === 'command' && ask.kept.name === `${name} ${actionName}` ? ask.kept.fields : null;
  if (kept) ask.found();
  return {
    title: `/${name} ${actionName}`,
    content: (
      <>
        <p>{action.words}</p>
        <form
          method="post"
          action="/command"
          class="form"
          enctype="multipart/form-data"
          aria-label={plain(action.words)}
          {...(kept ? { id: 'kept' } : {})}
        >
          <Hidden context={context} args={{ _command: name, _action: actionName }} />
          {fields.map((field) => (
            <FieldView field={field} kept={kept?.[field.name]} context={context} />
          ))}
          <button type="submit" class="button main">
            {say('do command')}
          </button>
        </form>
        <p>
          <a class="button" href="/commands">
            {say('all commands')}
          </a>
        </p>
      </>
    ),
  };
}
