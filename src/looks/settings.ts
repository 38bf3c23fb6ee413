import type { Block, Field, Message } from '../../shared/messages.js';
import { moderations, settingNames, type SettingName } from '../../shared/moves.js';
import { registers, strategies } from '../../shared/strategies.js';
import { groupsOf } from '../practice/lookup.js';
import { switches } from '../practice/settings.js';
import type { Group } from '../practice/state.js';
import { strategyWords } from '../progress/doing-words.js';
import { answer, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, move, pick, prose, sameOptions, typed } from './blocks.js';
import { allowedBlocks } from './allowed-blocks.js';
import { notReady } from './not-ready.js';
import { settingValue } from './setting-values.js';

function field(asked: Asked, setting: SettingName): Field {
  const value = settingValue(asked.state.settings, setting);
  const label = staff(`setting ${setting}`);
  if (setting === 'moderation') return pick('value', label, sameOptions(moderations), true, value);
  if (setting === 'picture secret' || setting === 'staff passphrase')
    return pick('value', label, sameOptions(switches), true, value);
  if (setting === 'register') return pick('value', label, sameOptions(registers), true, value);
  return typed('line', 'value', label, { value, hint: staff(`hint ${setting}`) });
}

function strategiesOf(group: Group): readonly Block[] {
  const open = strategies.map((strategy) => {
    const args = { strategy, group: group.id };
    const name = strategyWords(strategy);
    return group.open.includes(strategy)
      ? choice(staff('close strategy', { name }), move('close-strategy', args))
      : choice(staff('open strategy', { name }), move('open-strategy', args));
  });
  const now = strategies.filter((strategy) => group.open.includes(strategy)).map(strategyWords);
  return [
    heading(staff('strategies of', { group: group.name })),
    prose(now.length === 0 ? staff('strategies none') : staff('strategies open', { names: now.join(', ') })),
    ...choices(null, open),
  ];
}

/** Every setting of the class in a form of its own, and which strategies are open for each group. */
export function settings(asked: Asked): readonly Message[] {
  const title = staff('settings title', { name: asked.state.name });
  return [
    answer(asked, title, [
      heading(title),
      ...notReady(asked),
      ...allowedBlocks(asked.by.role, [
        ...groupsOf(asked.state).flatMap(strategiesOf),
        ...settingNames.flatMap((setting) => [
          ...(setting === 'moderation' ? [prose(staff('moderation why'))] : []),
          form(
            staff(`setting ${setting}`),
            move('change-setting', { setting }),
            [field(asked, setting)],
            staff('save'),
          ),
        ]),
      ]),
    ]),
  ];
}
