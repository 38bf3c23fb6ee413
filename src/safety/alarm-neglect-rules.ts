import { alarmRulesOf } from './alarm-rule.js';

const harmless = 'FUN; LOL; GAME; CARE; ^_they|the|people|THEIRKIN; WOULD';

/** Words that may mean that a child is left without care. */
export const neglectRules = alarmRulesOf([
  {
    name: 'nothing to eat',
    when:
      'no|nothing|none|any|empty|without|not_enough FOOD ' +
      'at_home|in_our|at_ours|in_the_house|here|anymore|since|left|agen|again|for|until|today|' +
      'because|in_my|every|and|all|at_mine|to_eat; theres|is|have|got|has|was|be ' +
      'no|nothing|not|never|any FOOD|to_eat .. ' +
      'home|ours|again|house|since|LONG|mine|us|anymore|mum|and; nothing ' +
      'at_home|in_the_fridge|to_eat_at|to_eat_since|to_eat_again|to_eat_here; i|we|us nothing ' +
      'to_eat|eat; fridge is|was|stays|always empty|locked|has_nothing; ' +
      'dont|not|never|havent|hasnt|without have|get|got|been|any FOOD ' +
      'home|at|since|LONG|anymore|because|enough|$; not|havent|hasnt|didnt|dont|without|never ' +
      'eaten|eat|food|ate|dinner|meal|fed .. ' +
      'since|days|day|week|two|three|monday|tuesday|wednesday|thursday|friday|saturday|sunday|' +
      'yesterday; only|last|proper|one|real time|food|meal|FOOD|thing .. ' +
      'school|day|eat|was|a_day|week; I .. HUNGRY .. ' +
      'nothing|home|night|nobody|every|all_the_time|always|weekend|weekends|mum|sleep|no; i|we|am|so ' +
      'HUNGRY at|in|every|all home|night|weekend; eat|ate|eats|eating|take|takes|taking|get|found ' +
      'FOOD|crusts|rubbish|it|things|paper .. bins|bin|rubbish|trash|tummy|full|dumpster; ' +
      'lunch_boxes; I|we only get|got|eat|had|have FOOD if|when|from|once|good; FOOD .. if .. good; ' +
      'not|dont|never|isnt allowed|let|gets|give|gives|feed|feeds FOOD|me_food|us_food .. ' +
      'because|home|if|until|me|when|at_home|anymore|us; no_money_for|cant_afford ' +
      'food|dinner|FOOD|to_eat; so .. little|brothers|sister|baby .. get|gets|can eat|it|some|food; ' +
      'pretend eaten|not_hungry|full; had|have|eat|ate ' +
      'ketchup|paper|crumbs|noodles|cereal|rice|bark|nettles .. ' +
      'yesterday|LONG|only|before|again|nothing|every; feeds my|only|him not; only_feeds; feeds|feed ' +
      '.. not|only me; last|proper|real meal|dinner|food was|at; mum|dad|KIN no|has_no money ' +
      'for|left food|dinner|it; i|we had|have|got nothing $; stomach|tummy growls|growl|hurts .. ' +
      'no|empty|food|hungry|bread; school lunch|dinner only; only eat|food|meal|eats when|if|the|is ' +
      '.. school|visits|apple|gran|cleaned|lunch; eat|ate|eats|eating ' +
      'soap|toothpaste|paper|cats_food|dog_food|chalk|grass|bark|leaves .. ' +
      'because|hungry|full|nothing|i|was; fridge .. only|just|nothing|beer|empty; ' +
      'not|havent|hav|hav_not et|eaten|ate since|for LONG|yesterday|days; find your_own ' +
      'dinner|food|house; forgets|forget|cant_remember to_feed; asked ME for food; no ' +
      'lunch_money|money_for; steal .. dinner|food|bread; toast|noodles|cereal|rice for every|each ' +
      'meal; look for_food behind|in|at; i know hunger|hungry how|like|these; have|had had ' +
      'no_food|nothing since|for|LONG; dont|not ask for food; begging|beg for food',
    unless:
      `${harmless}; breakfast cos|because|having|today; overslept; milk; fish; broccoli; lunch_was; ` +
      'starve than; he_had; ANIMAL; ^_there_was; packed; forgot_my; ^_how|why|did; give_the; ' +
      'when_is; waiting; pizza; burger; restaurant; diet|fast|ramadan|fasting; dentist',
    example: 'im hungry there is nothing at home',
    not: 'how did they survive with no food',
  },
  {
    name: 'left alone',
    when:
      'ELDER|parents gone|left|away|out|went|disappeared|leaves|leave|goes .. ' +
      'LONG|ago|alone|weeks|never|nobody|back|dont|know|night; ELDER ' +
      'hasnt|doesnt|dont|not|never|didnt|isnt|wont|havent come|been|came|back|home|return|returned ' +
      '.. home|LONG|back|night|since|again; NOBODY ' +
      'home|comes|came|is|looks|cares|wakes|feeds|here|checks|else|picks .. ' +
      'home|till|night|late|for|LONG|at_night|after|never|always|else|up; I|we|and_me|me ' +
      'am|are|is|be|being|left|stay|by_myself|feel alone|on_my_own|by_myself|by_ourselves|on_our_own ' +
      'LONG|at_night|every|in_the_night|all|with|for|again|with_the_baby|and|here|most|since|nights; ' +
      'always alone|on_my_own at_home|here|in_the; home_alone every|always|at_night|again|LONG; LONG ' +
      '.. alone|by_myself home|at_home|here|with; i|im|am NUM .. cook|alone|wash; KIN .. never|not ' +
      'there|home|here|around|ever; left|leave|leaves ME|us alone|on_my_own|with|by_ourselves .. ' +
      'LONG|night|baby|nobody|days; dont know when|if|where ELDER back|comes|coming|home|is; parents ' +
      'away all|for|since; mum_forgot_me; KIN dusnt|dosnt|doesnt|doesn come; forgot me again; ' +
      'ELDER_went_friday; ELDER left|leaves|drove|forgot ME at|off|on_purpose|in_the|there; ' +
      'they|mum|dad go|goes to_the_pub .. we|i|wait|alone; wait in_the_car till|until|at|all; ' +
      'parents|mum|dad forget|forgot|forgets i|me|im|about_me; nobody is_there|is_home|is_here|signs ' +
      '..; we are_NUM|are kids .. looks_after; mum|dad went|left to get .. not|isnt|hasnt back; KIN ' +
      'isnt|not|hasnt been|come back|home; didnt|forgot come|to get|pick|fetch me again|and; NOBODY ' +
      'looked|looks for me|her|him',
    unless:
      `${harmless}; work|works; school_trip; shopping; next_door; sea|army|ship|till_march; ` +
      'watched|cartoons; hospital .. baby|fine|better; hour|minutes|ten_minutes|watched; aunt|gran ' +
      '.. came|picks|looks; another_city; moved; split; divorced; holidays; late_because; died; ' +
      'pancakes; back_with; bus',
    example: 'mum has been gone since friday and i dont know when she is back',
    not: 'mum was away at work so my aunt made pancakes',
  },
  {
    name: 'cannot wake somebody',
    when:
      'ELDER|SIBLING|friend|§|she|he|LITTLE not|cant|wont|isnt|didnt|doesnt|dont ' +
      'wake|waking|breathing|move|moving|get_up|breathe|wake_up $; ELDER|SIBLING|LITTLE|baby ' +
      'not|wont|isnt|doesnt|cant|dont|hasnt ' +
      'wake|waking|breathing|answer|moving|get_up|got_out_of_bed|move|woken|talk; i ' +
      'cant|cannot|tried|couldnt wake|get her|him|mum|dad|them|my|ELDER up|$|anymore|and|; I|we ' +
      'cant|cannot wake|wayk ELDER|her|him; ELDER lies|lying|laying|is|sleeps in|on ' +
      'the_floor|on_the_bathroom; ELDER sleeps|sleep|asleep|in_bed|bed ' +
      'since|all_day|all|LONG|with|for|weeks .. ' +
      'alone|bottles|food|toast|myself|i|fridge|yesterday|cant; ELDER hasnt|havent got|gotten|been ' +
      'out|up of bed|for; swallowed|took something|pills|a_lot|lots|tablets|too .. ' +
      'wake|KIN|my|sister|brother; SIBLING|ELDER coughing|cough|throwing_up|cough_up blood; KIN ' +
      'collapsed; i put|putting mum|dad to_bed; ELDER is|was|got DRUNK|drunk|passed_out; ELDER takes ' +
      'stuff|drugs|things|pills|needles; DRUNK on_the_floor|in_our; ELDER DRUNK ' +
      'all|every|too|alot|when|and|again|since|bottles',
    unless:
      `${harmless}; dog|cat; coffee|tea|water|milk|juice; alarm; drinks_tea; morning_coffee; ANIMAL; ` +
      '^_the; phone; baby_brother_cries; snores; funeral; died',
    example: 'dad wont wake up',
    not: 'my dog wont wake up for walks',
  },
  {
    name: 'a home without warmth or bed',
    when:
      'no|without|isnt|got_no|not_have|dont_have ' +
      'heating|heat|electricity|water|electric|power|bed|blanket|blankets|light .. ' +
      'home|house|flat|because|since|and|cant|ours|in|to|LONG|left|baby|cold|bed; we|i|ours ' +
      'have|got|has|with no|without heating|heat|electricity|water|electric|power|bed|light; ' +
      'they|he|council|somebody turned|cut|switched it|them|the_heating|electricity|power|gas|water ' +
      'off; cut_it_off; turned_it_off .. cold|coats|because; I|we|me|KIN|mum_and_i ' +
      'sleep|slept|slep|live|living|sleeping|stay|staying|lives|stayed|spent in|at|on|under ' +
      'ROUGHBED|the_ROUGHBED|our_ROUGHBED|a_ROUGHBED|the_parc|parc|a_car|the_station; I|we|me ' +
      'sleep|slept|slep|sleeping|live|living|stay in|at|on|under the|a|our|my ' +
      'ROUGHBED|floor|kitchen; sleep in .. coats|coat|clothes because|they|no|it|cold|freezing; i ' +
      'sleep on_the_floor; slept|sleep|sleeping outside; so|too|very cold|freezing .. ' +
      'bed|breath|sleep|blue|home|house|our|inside; house|flat|room|home|kitchen is|full|has|so .. ' +
      'freezing|rats|mould|rubbish|mice|needles|poo|dirty; needles|syringes on|in; hands|feet|lips ' +
      '.. blue; homeless|evicted|hostel|no_home|lost_our_home|kicked_out; sold|sell the|our|my ' +
      'bed|beds|heater|tv|fridge|sofa|cooker; landlord .. out|stuff|road|kicked|lock; coat|coats ' +
      'to|in bed; changed the_lock|locks; no|without roof|door|windows .. since|kicked|home|we; ' +
      'sleeps|sleep at a|the bus_stop|station; i|we live in_the|in_a car|van|tent; havent got a_bed; ' +
      'mould .. lungs|bed|sick|move; shoes .. taped|holes|too_small|toes|bleed',
    unless:
      `${harmless}; tent; on_the_way; france|drive|journey|trip; cousins; mattress; moved; ` +
      'cards|torch|candles|cocoa; boats|boat; camp; the_dog|cat|fox|rabbit; snores; pretend; ' +
      'hours|olden; power_cut; bedtime; ANIMAL; stars; new_house; ^_in',
    example: 'we sleep in the car now',
    not: 'we slept in the car on the way to france',
  },
  {
    name: 'ill or dirty and nobody helps',
    when:
      'BODY|SICK|SIBLING|KIN|i|my|baby SICK|hurts|hurt|bad|broken|green|bleeding|sick|hot|infected ' +
      '.. no|nobody|wont|never|dont|not|cant|too .. ' +
      'take|takes|took|doctor|doctors|dentist|care|money|cares|see|hospital|school; ' +
      'no|not|never|nobody|wont|dont take|takes|took|get|call|allowed|see me|us|him|her|it|to|a|the ' +
      'doctor|dentist|hospital|to_the_doctor|to_anyone; doctors|doctor|dentist ' +
      'cost|costs|expensive|too|no money|we; SICK .. since|for|LONG .. ' +
      'no_doctor|nobody|quiet|dad_says|mum_says|wont; BODY bleeding|infected|swollen since|for|LONG; ' +
      'nobody|noone|never|not|mum_doesnt|dont washes|washed|wash|cleans .. ' +
      'clothes|me|them|hair|us|sheets; same|dirty|wet clothes|uniform|bed|pants|clothing .. ' +
      'LONG|every|nobody|because|since|all; no|not|havent water|bath|shower|washed .. ' +
      'smell|stink|weeks; i smell|stink .. because|sorry|water|clothes|wash; says ' +
      'no_doctor|be_quiet; without doctor|help; NOBODY ' +
      'takes_care|looks_after|cares_for|care_about|cares_about|feeds|loves ' +
      'me|us|if_i|my_little|my_brother|my_sister; nobody wakes me',
    unless:
      `${harmless}; medicine; got_better; fine; took_me_to_the; school_nurse; pancakes; ` +
      '^_nobody_likes; in_the_war; broccoli',
    example: 'my tooth hurts for a month and nobody takes me to the dentist',
    not: 'the dentist took my tooth out today',
  },
  {
    name: 'a child who cares for all',
    when:
      'I|me|we have_to|has_to|got_to|must|look|looks|had_to|need_to|always .. ' +
      'feed|cook|change|look_after|care_for|wash|put|mind|watch|clean .. ' +
      'twins|baby|brother|brothers|sister|sisters|mum|dad|little_ones|LITTLE|sick .. ' +
      'nobody|because|alone|night|drinks|else|gone|cant|drunk|sick|bed|dad_went|day; KIN|ELDER ' +
      'drinks|drunk|high .. i|me|so; I look_after|looks_after|feed the_baby|my|LITTLE|KIN ' +
      'all|every|night|because|alone|when|while; there_is_nobody else; nobody else .. ' +
      'do|feed|does|is|KIN; i make .. for the_little_ones|them|LITTLE .. because|sleeps|drunk|nobody',
    unless: `${harmless}; saturdays|i_get|pocket_money|5_for|babysit; dog|cat; tidy`,
    example: 'i have to feed the twins every day there is nobody else',
    not: 'i babysit my brother on saturdays for pocket money',
  },
]);
