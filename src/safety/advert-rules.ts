import { rulesOf, type Rule } from './rule.js';

/** Advertising and chain posts; held as a flood, since they crowd out the talk. The list is this project's own. */
export const advertRules: readonly Rule[] = rulesOf('flood', [
  [
    'chain post',
    '(?:repost|re post|share|forward|send|copy and paste|copy|pass) ~2 (?:this|it|if|on|to) ~5 (?:everyone|people|friends|love|or|luck|if you|class|mum|\\d+|ten)|repost|(?:send|share|forward) (?:this )?(?:to|with) (?:ten|\\d+|five|everyone|all|every)|ignore if you dont|bad luck (?:for|if)|if you (?:dont|do not) ~2 (?:post|send|share|copy|pass|repost|forward|comment|like|reply) ~8 (?:stands?|will|die|dies|comes?|haunts?|years|luck|curse|cursed|bed|tonight|mum)|(?:post|send|share|copy|paste|forward|pass) (?:this|it) ~2 (?:\\d+|five|ten|three|seven|all|every|other) (?:\\S+ )?(?:channels?|people|groups?|friends?|chats?|times|others|classmates)|do not stop reading|dont stop reading this|tag (?:\\d+|three|five|ten|your) (?:\\S+ )?(?:friends|people|besties)|(?:like|comment|react) (?:is|for) ~2 (?:like|comment|luck|love)',
    'repost if you love your mum',
    'share the bread with the wolf',
  ],
  [
    'wants followers',
    '(?:like|likes) (?:and|n) (?:share|subscribe|comment|follow|sub)|subscribe|sub to|hit (?:the )?(?:like|bell|subscribe)|shout ?out|follow for follow|follow (?:my|me|back)|my channel|(?:watch|check out|look at|see|view|visit|join) my (?:\\S+ )?(?:channel|video|videos|stream|page|profile|server|vlog|blog|shop|store|stall|site|website|game)|free (?:coins|gems|skins|robux|money|vbucks|gift cards?|followers|likes|credits|diamonds)|giveaway|(?:vote|like|like for like) (?:for )?me ~2 (?:please|online|app|show)',
    'subscribe to my channel',
    'free the fox',
  ],
  [
    'sells or swaps',
    '(?:i am|i|my \\S+|we|we are|who wants to|want to|anyone want to|mum|dad|\\S+) ~1 (?:selling|sells?|trade|trading|swap|swapping) ~4 (?:skins?|cards?|stickers?|bracelets?|slime|sweets|account|toys?|cakes?|stuff|coins|prices?|each|cheap|for \\d|shop|stall|list|dm|me|them|yours|shirts?|games?|clothes|eggs)|(?:selling|swapping|trading) \\S+ ~4 (?:each|for|cheap|price|p|dm|\\d+p?|swap)|(?:for sale|best prices?|buy one|half price|special offer|cheap ~2 (?:price|deal|sale)|discount|promo|coupon|order now|buy now|limited offer|dm me|pm me|message me to|ask me for (?:the|a) (?:list|price|link)|prices? ~2 (?:low|cheap|best)|(?:only|just) (?:\\d+|one|two|five|ten) (?:pounds?|dollars?|euros?|quid|each|p)|money back|no virus|click (?:here|the|this|on)|download|get (?:it|yours) (?:here|now|free)|sign up (?:here|now|for)|use (?:my )?code|install|win (?:a|an) (?:free|prize|phone|tablet|console)|(?:my|at my|at our|come to my|our) (?:stall|shop|online shop|lemonade stand|cake sale|bake sale|yard sale)|tell your (?:mums?|dads?|parents|friends|family)|two for one|half price|buy one get one|free delivery|per ?cent off|\\d+ off|(?:my|our) (?:uncles?|mums?|dads?|aunts?|brothers?|sisters?|cousins?|grans?|family|familys|parents) (?:\\S+ )?(?:shop|pizza place|pizzeria|restaurant|cafe|salon|business|stall|store|bakery|takeaway|company|channel|website|band|app) ~3 (?:has|is|sells|open|got|does|opens|needs|offers)|(?:i|we|i will) (?:will )?(?:pay|give) ~3 (?:bucks|pounds?|quid|dollars?|euros?|cash|robux|coins|vbucks|gems|money|p|sweets|pence)|(?:make|makes|making|earn|earns|earned|earning|get|gets) (?:\\S+ )?(?:\\d+|money|cash|hundred|thousand)(?: \\S+){0,2} (?:a|per|every|each) (?:day|week|hour|month|minute)|(?:buy|get) my (?:\\S+ )?(?:slime|cards|stickers|sweets|cookies|bracelets|game|skins|stuff|toys|art|drawings|book)|ask me how|get a bonus|(?:work|earn) from home|sign up (?:with|using) my|my (?:referral|invite|promo) (?:code|link)|(?:do|does) (?:my|your|ur) (?:homework|reading question|questions) (?:for|serious|\\d))',
    'my sister sells bracelets best prices',
    'the merchant sells salt',
  ],
  [
    'says it is spam',
    'spam(?:ming|med)?|(?:flood|flooding) the chat|first comment',
    'i am spamming the chat',
    'the river is flooding',
  ],
]);
