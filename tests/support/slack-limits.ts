/** Published limits of Block Kit and of views (Slack's reference pages on blocks, block elements, composition objects and views), checked on payloads as they are sent. */

type Json = Readonly<Record<string, unknown>>;

/** What each block and element may hold, by the types that Slack publishes as @slack/types. */
const keys: Readonly<Record<string, readonly string[]>> = {
  header: ['text'],
  divider: [],
  section: ['text', 'fields', 'accessory', 'expand'],
  rich_text: ['elements'],
  actions: ['elements'],
  context: ['elements'],
  input: ['label', 'hint', 'optional', 'element', 'dispatch_action'],
  button: ['text', 'value', 'url', 'style', 'confirm', 'accessibility_label'],
  plain_text_input: ['initial_value', 'multiline', 'min_length', 'max_length', 'placeholder'],
  static_select: ['options', 'option_groups', 'initial_option', 'placeholder'],
  multi_static_select: ['options', 'option_groups', 'initial_options', 'placeholder', 'max_selected_items'],
  radio_buttons: ['options', 'initial_option'],
  checkboxes: ['options', 'initial_options'],
  file_input: ['filetypes', 'max_files'],
};
const blockTypes = new Set(['header', 'divider', 'section', 'rich_text', 'actions', 'context', 'input']);
const richTypes = new Set([
  'rich_text_section',
  'rich_text_list',
  'rich_text_quote',
  'rich_text_preformatted',
]);

const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const list = (value: unknown): readonly Json[] => (Array.isArray(value) ? (value as Json[]) : []);
const text = (value: unknown): string => (typeof value === 'string' ? value : '');

class Checker {
  readonly breaches: string[] = [];
  check(fine: boolean, words: string): void {
    if (!fine) this.breaches.push(words);
  }
  textObject(value: unknown, most: number, where: string): void {
    if (!isJson(value)) return this.check(false, `${where}: no text object`);
    this.check(
      value['type'] === 'plain_text' || value['type'] === 'mrkdwn',
      `${where}: type ${text(value['type'])}`,
    );
    const { length } = text(value['text']);
    this.check(length >= 1 && length <= most, `${where}: ${length} characters of 1 to ${most}`);
  }
  known(value: Json, where: string): void {
    const allowed = keys[text(value['type'])];
    if (!allowed) return this.check(false, `${where}: unknown type ${text(value['type'])}`);
    for (const key of Object.keys(value)) {
      const common = ['type', 'block_id', 'action_id', 'focus_on_load'].includes(key);
      this.check(common || allowed.includes(key), `${where}: ${text(value['type'])} with ${key}`);
    }
    for (const key of ['block_id', 'action_id'])
      if (key in value) {
        const { length } = text(value[key]);
        this.check(length >= 1 && length <= 255, `${where}: ${key} of ${length}`);
      }
  }
  option(value: Json, where: string): void {
    this.textObject(value['text'], 75, `${where} option`);
    const { length } = text(value['value']);
    this.check(length >= 1 && length <= 150, `${where}: option value of ${length}`);
    if ('description' in value) this.textObject(value['description'], 75, `${where} option description`);
  }
  options(value: Json, most: number, where: string): void {
    const options = list(value['options']);
    this.check(
      options.length >= 1 && options.length <= most,
      `${where}: ${options.length} options of 1 to ${most}`,
    );
    for (const option of options) this.option(option, where);
    const values = options.map((option) => text(option['value']));
    this.check(new Set(values).size === values.length, `${where}: two options of one value`);
  }
  initial(element: Json, where: string): void {
    const groups = list(element['option_groups']).flatMap((group) => list(group['options']));
    const all = [...list(element['options']), ...groups].map((one) => JSON.stringify(one));
    const first = element['initial_option'] === undefined ? [] : [element['initial_option']];
    for (const one of [...first, ...list(element['initial_options'])])
      this.check(all.includes(JSON.stringify(one)), `${where}: begins with what is no option`);
  }
  element(value: Json, where: string): void {
    this.known(value, where);
    if ('placeholder' in value) this.textObject(value['placeholder'], 150, `${where} placeholder`);
    this.initial(value, where);
    switch (value['type']) {
      case 'button':
        this.textObject(value['text'], 75, `${where} button`);
        this.check(text(value['value']).length <= 2000, `${where}: value of ${text(value['value']).length}`);
        this.check(
          value['style'] === undefined || ['primary', 'danger'].includes(text(value['style'])),
          `${where}: style`,
        );
        return;
      case 'plain_text_input': {
        const most = Number(value['max_length'] ?? 3000);
        this.check(most >= 1 && most <= 3000, `${where}: max_length ${most}`);
        this.check(text(value['initial_value']).length <= most, `${where}: begins with too much`);
        return;
      }
      case 'radio_buttons':
      case 'checkboxes':
        return this.options(value, 10, where);
      case 'static_select':
      case 'multi_static_select': {
        const groups = list(value['option_groups']);
        if (groups.length === 0) return this.options(value, 100, where);
        this.check(!('options' in value) && groups.length <= 100, `${where}: ${groups.length} groups`);
        for (const group of groups) {
          this.textObject(group['label'], 75, `${where} group`);
          this.options(group, 100, where);
        }
        return;
      }
      default:
    }
  }
  rich(value: Json, where: string): void {
    this.check(richTypes.has(text(value['type'])), `${where}: ${text(value['type'])}`);
    this.check(list(value['elements']).length > 0, `${where}: empty rich text`);
    for (const one of list(value['elements'])) {
      if (value['type'] === 'rich_text_list') this.rich(one, where);
      else if (one['type'] === 'text') this.check(text(one['text']).length > 0, `${where}: empty text`);
    }
  }
  block(value: Json, where: string): void {
    this.check(blockTypes.has(text(value['type'])), `${where}: ${text(value['type'])} is no block`);
    this.known(value, where);
    switch (value['type']) {
      case 'header':
        this.textObject(value['text'], 150, `${where} header`);
        this.check(isJson(value['text']) && value['text']['type'] === 'plain_text', `${where}: header text`);
        return;
      case 'section':
        return this.textObject(value['text'], 3000, `${where} section`);
      case 'rich_text':
        this.check(list(value['elements']).length > 0, `${where}: empty rich text`);
        for (const one of list(value['elements'])) this.rich(one, where);
        return;
      case 'actions': {
        const elements = list(value['elements']);
        this.check(elements.length >= 1 && elements.length <= 25, `${where}: ${elements.length} elements`);
        const ids = elements.map((one) => text(one['action_id']));
        this.check(new Set(ids).size === ids.length, `${where}: two actions of one id`);
        for (const one of elements) this.element(one, where);
        return;
      }
      case 'input':
        this.textObject(value['label'], 2000, `${where} label`);
        if ('hint' in value) this.textObject(value['hint'], 2000, `${where} hint`);
        if (isJson(value['element'])) this.element(value['element'], where);
        return;
      default:
    }
  }
  blocks(value: unknown, most: number): void {
    const blocks = list(value);
    this.check(blocks.length >= 1 && blocks.length <= most, `${blocks.length} blocks of 1 to ${most}`);
    const ids = blocks.map((block) => text(block['block_id'])).filter((id) => id !== '');
    this.check(new Set(ids).size === ids.length, 'two blocks of one id');
    for (const [at, block] of blocks.entries()) this.block(block, `block ${at}`);
    const size = textLength(blocks);
    this.check(size <= 13_200, `${size} characters over all blocks`);
  }
}

function textLength(value: unknown): number {
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + textLength(one), 0);
  if (!isJson(value)) return 0;
  return Object.entries(value).reduce((sum, [key, one]) => {
    if (key === 'text' && typeof one === 'string') return sum + one.length;
    return sum + textLength(one);
  }, 0);
}

/** Limits that a message breaks, in words. */
export function messageBreaches(payload: Json): readonly string[] {
  const checker = new Checker();
  checker.check(text(payload['text']).length >= 1, 'no text for notifications');
  checker.check(text(payload['text']).length <= 40_000, 'too long a text');
  if (payload['blocks'] !== undefined) checker.blocks(payload['blocks'], 50);
  return checker.breaches;
}

/** Limits that a view breaks, in words. */
export function viewBreaches(view: Json): readonly string[] {
  const checker = new Checker();
  checker.check(view['type'] === 'modal', 'no modal');
  checker.textObject(view['title'], 24, 'title');
  for (const key of ['close', 'submit']) if (key in view) checker.textObject(view[key], 24, key);
  checker.check(text(view['private_metadata']).length <= 3000, 'too long private_metadata');
  checker.check(text(view['callback_id']).length <= 255, 'too long callback_id');
  checker.blocks(view['blocks'], 100);
  const inputs = list(view['blocks']).some((block) => block['type'] === 'input');
  checker.check(!inputs || 'submit' in view, 'inputs without a button to send them');
  return checker.breaches;
}

/** What Slack would parse, or draw in its own way, because of a text in a payload. */
export function liveIn(payload: Json): readonly string[] {
  const found: string[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) return value.forEach(visit);
    if (!isJson(value)) return;
    const type = text(value['type']);
    if (type === 'mrkdwn' || type === 'markdown') found.push(`${type}: ${text(value['text'])}`);
    if (type === 'plain_text' && value['emoji'] !== false)
      found.push(`emoji by name: ${text(value['text'])}`);
    if (['link', 'user', 'channel', 'broadcast', 'usergroup', 'emoji', 'date'].includes(type))
      found.push(type);
    Object.values(value).forEach(visit);
  };
  visit(payload['blocks'] ?? payload);
  const notice = text(payload['text']);
  if (/<|>|&(?!(?:amp|lt|gt);)/u.test(notice)) found.push(`parsed text: ${notice}`);
  for (const key of ['parse', 'link_names'])
    if (payload[key] !== undefined && payload[key] !== false && payload[key] !== 'false') found.push(key);
  return found;
}

/** Every word that somebody reads in a payload or a view, top to bottom. */
export function wordsSeen(payload: unknown): string {
  const words: string[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) return value.forEach(visit);
    if (!isJson(value)) return;
    if (value['type'] === 'rich_text_section' || value['type'] === 'rich_text_quote') {
      words.push(
        list(value['elements'])
          .map((one) => text(one['text']))
          .join(''),
      );
      return;
    }
    for (const [key, one] of Object.entries(value)) {
      if (
        typeof one === 'string' &&
        (key === 'initial_value' || (key === 'text' && value['type'] === 'plain_text'))
      )
        words.push(one);
      else if (!key.startsWith('initial_option')) visit(one);
    }
  };
  const whole =
    isJson(payload) && payload['blocks'] !== undefined
      ? { ...payload, text: undefined, private_metadata: undefined }
      : payload;
  visit(whole);
  return words.join('\n');
}
