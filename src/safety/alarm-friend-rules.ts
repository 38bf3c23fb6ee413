import { alarmRulesOf } from './alarm-rule.js';

const who = 'REALFRIEND';
const harmless =
  'GAME; baby .. cries; secret_about; LOL; CARE; STORY; paper|cake|rope; story; birthday; party; ANIMAL; ball; answer|question|sum-up|idea|point; ^_he';

/** Words that may mean that another child is in danger. */
export const friendRules = alarmRulesOf([
  {
    name: 'a friend in danger',
    when:
      `${who} WANT|says|said|plan|plans|is|might|told|going|keeps|texted|wrote|talks|thinks|tried|` +
      'swallowed|took .. ' +
      'DIE|PILLS|goodbye|jump|hurt_herself|hurt_himself|run_away|knife|kill|suicide|be_here|' +
      `forever|cut|live; ${who} SELFCUT herself|himself|themselves|themself|her_arms|his_arms|arms; ` +
      `${who} has|with|got|have|always|covered|comes MARK|knife|bruises|cuts; ${who} ` +
      'THEIRKIN|dad|stepdad|mum|uncle|brother|HE HARM|ROUGH|TOUCH|hits|LOCK|hurts .. ' +
      `him|her|them|room|alone|LONG|away|there|hungry; ${who} said|says|told|tells ` +
      `HARM|DIE|hungry|LOCK|scared|TOUCH|no_food|nobody|PILLS|hits; ${who} told_me|told_us|says .. ` +
      `HARM|hits|hurts|die|hungry|touches; ${who} sends|sent|send|shares IMAGE ` +
      `to|of_herself|of_himself|HE; ${who} meet|meets|meeting|met|going|talks|chats|wants|dates .. ` +
      `man|stranger|online|older|grown|alone|boyfriend|old|guy; ${who} ` +
      'not|doesnt|dont|never|isnt|hasnt|stopped|wont|only ' +
      `eat|eaten|allowed_food|fed|eating|food|come_home|wake|eats|crisps; ${who} ` +
      `take|takes|eats|eat|asks|begs FOOD|us|food|me .. bins|home|every|LONG|food|gone; ${who} ` +
      'sleeps|lives|live|sleep|slept|stays|living in|at|on|outside the_ROUGHBED|a_ROUGHBED|ROUGHBED; ' +
      `${who} ran|run|running|gone|missing|disappeared away|missing|since|and|last|from; ${who} ` +
      `gave|giving|gives .. things|stuff|everything; ${who} ` +
      `cries|screams|screaming|crying|cry|scream HABIT|all|every|because|at_night|in|and; ${who} ` +
      'is|gets|getting|being|got HARM|hurt|bullied|beaten|abused|starved|LOCK|followed|unsafe|hit ' +
      `..; worried|scared|frightened about|for ${who}; i think ${who} is|gets .. ` +
      'hurt|hungry|danger|beaten|hit; she|he wrote|said|told|sent|texted|left goodbye|bye .. ' +
      `forever|phone|answer|scared|everybody|gone|now|off; heard|seen|see|find from ${who}|§ .. ` +
      'goodbye|phone|gone|missing|off|since|forever; promised|swore|made_me|asked|told ' +
      'not_to_tell|dont_tell|not_tell|to_tell|never_tell|to_keep .. ' +
      'KILL|die|hurt|cut|hits|plan|dad|home|himself|herself; someone|girl|boy|kid|neighbours ' +
      'next_door SHOUT|screams|cries|cry|hitting; hear|hearing hitting|screaming|crying|screams; ' +
      `shes|she|he said|says|going|wants|will she|he|shes|to jump|die|kill|hurt ..; ${who} .. says ` +
      `.. falls|fell|none_at_home|nothing; ${who} in|has danger; KIN|SIBLING swallowed|took|drank ` +
      'something|PILLS|pills|a_lot; SIBLING talks|meets|meet|sends|sent|chats .. ' +
      'man|old|stranger|meet|IMAGE; SIBLING has|with MARK; goodbye like|for forever; told me ' +
      `goodbye; wrote|said|says goodbye to|for everybody|everyone|us|me|forever; ${who} showed|shows ` +
      `me|us MARK|cuts|knife|pills; ${who} has|had MARK|burns; her|his|their ` +
      'stepdad|dad|mum|uncle|brother broke|hit|hits|hurt|hurts|burned|beats|punched|touches ' +
      `her|his|him|them; ${who} standing|sitting|stands|stood on|at|near ` +
      'LEAP|the_roof|the_bridge|the_tracks|the_edge; someone|somebody|miss|teacher|you ' +
      `should|please|must check on ${who}; someone|please|can check on §; neighbour|neighbours HARM ` +
      `his|her|their|the kids|wife|children|son|daughter|dog; ${who} has_to|must|will marry; ${who} ` +
      `hides|drinks|drank|keeps blades|pills|perfume|knife|alcohol|bottle; ${who} ` +
      `talks|writes|wrote|says|draws about|list hurting|killing|dying|death|guns|kill|shoot; ${who} ` +
      `not ok|okay|home|safe .. said|over|looked|days|soon; ${who} will do_it|jump; told me|us ` +
      'how|when|that she|he will|wants|is do_it|die|kill|jump; mum|dad|parents left|leaves|locks ' +
      `her|him|them at|alone|out|in|outside; ${who} flinches|limps|faints_every|shakes; ` +
      'kid|boy|girl|child .. eats|eat|sleeps|lives|cries out_of|from|in|outside the ' +
      `bin|bins|street|car|rain|night; to get cut|married|circumcised; ${who} wears ` +
      `jumpers|sleeves|long .. sees|see|arms|summer|hide; boyfriend who is|was AGE; ${who} ` +
      'dad|mum|stepdad|uncle|brother hits|HARM|hurts|locks|touches|drinks',
    unless: harmless,
    example: 'my friend cuts herself',
    not: 'his friend cut the rope',
  },
]);
