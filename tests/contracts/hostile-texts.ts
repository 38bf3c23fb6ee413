/** Texts of our own that try to make a platform act, or to be read as what they are not; each with the words that must stay readable. */
export const hostileTexts: readonly (readonly [name: string, text: string, words: string])[] = [
  ['a call to everyone', 'Hello @everyone and @here', 'Hello everyone and here'],
  ['a call to a channel', '<!channel> <!here> <!everyone> look', 'channel here everyone look'],
  [
    'a mention of a person',
    '<@123456789012345678> <@!123456789012345678> <@U012ABCDEF> said so',
    'U012ABCDEF said so',
  ],
  [
    'a mention of a role, a room, a group',
    '<@&123456789012345678> <#123456789012345678> <#C012AB3CD|talk> <!subteam^S012AB3CD> hi',
    'C012AB3CD hi',
  ],
  ['a masked link', '[the tide](https://example.test/bad) [x]( https://example.test )', 'the tide'],
  ['a masked link in angles', '<https://example.test/bad|the tide> <https://example.test>', 'the tide'],
  ['a link to write to', '<mailto:wren@example.test|write> <tel:000000>', 'write'],
  ['a code fence that opens', '```js\nlimpet\n', 'js limpet'],
  ['a code fence that closes', 'limpet ``` `limpet` ``', 'limpet limpet'],
  ['marks of weight', '**limpet** __limpet__ ~~limpet~~ ||limpet|| *tide* _tide_ ~tide~', 'limpet tide'],
  [
    'marks at the beginning of a line',
    '# big\n## big\n-# small\n> quoted\n>>> quoted\n- one\n1. one',
    'big small one',
  ],
  ['escapes of its own', 'a \\*limpet\\* \\\\[x](y) \\@everyone \\<@123456789012345678>', 'limpet everyone'],
  [
    'a time and an emoji in angles',
    '<t:1700000000:R> <:limpet:123456789012345678> <a:x:123456789012345678>',
    'limpet',
  ],
  ['a date in angles', '<!date^1392734382^{date}|limpet>', 'limpet'],
  ['entities', '&lt;!channel&gt; &amp;lt; limpet', 'limpet'],
  ['a slash command in angles', '</held publish:123456789012345678> limpet', 'limpet'],
  ['a direction override', 'the \u202etide\u202c is \u2066out\u2069', 'the tide is out'],
  [
    'a flood of zero widths',
    `lim${'\u200b'.repeat(400)}pet ${'\u2060\ufeff'.repeat(200)}tide`,
    'limpet tide',
  ],
  ['a flood of combining marks', `l${'\u0301\u0328'.repeat(300)}impet`, 'impet'],
  ['control characters', 'lim\u0000pet\u0007 \u001b[31m tide', 'limpet tide'],
  ['half a character', 'limpet \ud83d tide', 'limpet tide'],
];
