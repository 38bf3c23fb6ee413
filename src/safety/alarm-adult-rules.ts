import { alarmRulesOf } from './alarm-rule.js';

const harmless =
  'LOL; ^_we_have_to; poster|drawing|page|board|homework|project|class_photo|baby_photo|school_photo; ^_the; THEIRKIN ASK; birthday; wedding; CARE; surprise; dog|cat|puppy';

/** Words that may mean that somebody wants pictures, secrets or meetings from a child. */
export const adultRules = alarmRulesOf([
  {
    name: 'asked for pictures',
    when:
      'ADULT|HE|ONLINE|friend|boyfriend|guy|coach|SIBLING|boy|stepdad|uncle ' +
      'ASK|takes|took|take|collects|trade|likes|has|have|get|sell|sends|sent|makes|made|says|said ' +
      'IMAGE of|from|in|without|or|every|me|my|with|on|private|because|and|if|more|to|he|she|they|$|' +
      'NAKED; HE|ADULT|ONLINE ASK .. NAKED; HE|ADULT|ONLINE|they ' +
      'have|has|got|took|take|takes|shared|keeps IMAGE of_me|of_my|of_us|from_me|that; I ' +
      'sent|send|have_to_send|must_send|gave him|them|it|HE NAKED|IMAGE; I sent|send|have_to_send ' +
      'IMAGE|NAKED .. scared|sick|he|him|regret|NAKED; i sent it and|to; send|sent|show|share|post ' +
      'NAKED|nudes; NAKED .. IMAGE|online|cam|camera; IMAGE .. NAKED; turn|put|switch|keep|go ' +
      'camera|cam|webcam|video on|for_him; dance|pose|undress|strip|film|show .. ' +
      'for|to|on|my|when|in HE|him|camera|cam|underwear|me|money|changes|NAKED|body; ' +
      'wants|want|asks|asked|pays|makes|told|begs me_to|us_to ' +
      'film|undress|dance|show|pose|take_off|strip|send|video; film|filmed|films my|me|us .. ' +
      'sister|changes|changing|shower|bath|toilet|room|bed; stop|stops|keeps|keep asking ' +
      'for|IMAGE|me; what i|I look|wear|wearing|am_wearing|looks like|without|in_bed|clothes|under ' +
      '.. clothes|HE|wants|asks|know|body; show|showed|shows|sent|sends ME|us|him|her|my ' +
      'rude|dirty|naked|sexy|private|gross|NAKED; gives|gave|pays .. if_i show|send|dance|film; if ' +
      'dont send|another|one_more .. show|post|share|tell|everyone|he|school; HE|they|ADULT ' +
      'show|post|share|send|leak|put it|them|IMAGE|video|the_first_one|my ' +
      'to|online|everyone|around|if|everywhere|on; see|look_at me|you in_the ' +
      'shower|bath|NAKED|changing; ask|asks|asked|asking ME for IMAGE|nudes|pics|pichers; ' +
      'do|must|should|have_to i_have_to|i send|answer it|one|him|more|pictures if|or|every; ' +
      'send|sent it|one or|without; everywhere|everyone saw|has_seen my|it|the IMAGE|video|picture; ' +
      'IMAGE|video|picture .. pay|posts|everywhere|leak; what i_sleep_in|i_wear|colour; someone ' +
      'has|have IMAGE of_me; man .. IMAGE of SIBLING|§|my|kids|children; wants|asks a|another IMAGE ' +
      'of_me|of_us|of_my',
    unless:
      `${harmless}; of_the|of_a|of_an|of_it|of_his|of_her_new; drawing; new_dog; can_you send; ` +
      'show_us|show_me the|how|his_garden|a; swimming_pool; aunt|gran|mum sent; video_game; ' +
      'film_night; text|passage|author; IMAGE in_the_book; film_was; a_film_about; we_watched',
    example: 'he wants private pictures of me',
    not: 'can we see a picture of the fox',
  },
  {
    name: 'asked to keep a secret',
    when:
      'our|a|little|special|big|keep|keeping|his|another secret .. ' +
      'tell|mum|dad|between|says|scared|angry|sick|cant|him|HE|man|or|not|mustnt|money|trouble|' +
      'uncle|friend|adult; HE|ADULT|uncle|coach|KIN|boyfriend ' +
      'says|said|told|made|makes|tells|wants|asked ME .. ' +
      'secret|not_tell|not_to_tell|dont_tell|never_tell|keep_quiet|delete|between_us|nobody|' +
      'not_say|dont_say; HE|ADULT|uncle|coach|boyfriend says|said|told it|its|it_is|this|thats|is ' +
      'our|a|the secret|system|little|special|between; ' +
      'not|dont|never|mustnt|cant|not_allowed|allowed|aloud|wont_let tell|say ' +
      'mum|dad|anyone|anybody|parents|nobody|anything|my|teacher|KIN|him|police|them_or|somebody .. ' +
      'HE|ADULT|he|she|hurt|angry|mad|said|secret|else|comes|sometimes|hits; if i|I|you ' +
      'tell|told|say|said .. ' +
      'hurt|HARM|kill|angry|lose|lost|sad|die|police|prison|get_me|trouble|jail|worse|happen|hits|' +
      'beat|place|job|take|away|leave|tell_everyone|post|finished|dead|hates; HE|ADULT|they ' +
      'says|said NOBODY|nobody believe|believes; cant|mustnt_to|mustnt|not_to tell|say ' +
      'ELDER|mum|anyone|nobody|parents; HE|ADULT wants|told|asked|requested|said|makes .. delete .. ' +
      'messages|chat|chats|messages|history|texts|them; delete our|the|my|all ' +
      'messages|chat|chats|texts; dont|doesnt|doesn|not|nobody|no know|knows .. ' +
      'i_have|i_talk|him|phone|he|call|meet; have_to|must|has_to|to ' +
      'keep_quiet|keep_it_quiet|lie|hide_it about|because|or|from|if; I|we have|got|know a secret .. ' +
      'with|bad|scared|man|uncle|HE|not_good|hurts|about_home; happened at camp|home; say|tell .. ' +
      'nothing|anything KIN|about; said|says .. dont_say_anything|not_to_say; tell_them_youre; have ' +
      'a secret|like_that with; secret .. sick|scared|afraid|uncles; asked|told|wants me get|come ' +
      'in|into|to his|the|her car|house|flat; said|says|promised|swear|swore|made_me not|dont|never ' +
      'to_tell|tell|say; cant|not_allowed_to|dare say|tell|talk it|about|anyone .. ' +
      'but|bad|out_loud|grandpa|uncle|dad|HE|he; i want to_tell but; will|ill|id|be ' +
      'taken_away|take_me_away .. if|tell|i; if i speak|talk|told|tel|tell .. ' +
      'HE|he|hospital|you|sick|kill|hurt|kil|they; cant_say_more|cant_write_more; dad|mum|he|they ' +
      'reads|read this|my_messages .. cant|so',
    unless:
      `${harmless}; present|ring|party; ending|spoil|spoiler|password; ^_dont_tell_mum_but dad; ` +
      'planning; in_the_village; like_the_baddie; the_ending; miss_what; ' +
      'secret_door|garden|passage|agent; can_you_keep; what_i_got; operators',
    example: 'he says it is our secret and i mustnt tell',
    not: 'its a secret what i got mum for her birthday',
  },
  {
    name: 'an adult too close',
    when:
      'special|secret friend|girl|boy|friendship|relationship|game|games|cuddle|cuddles|love; ' +
      'mature_for; i|am|so mature; STRANGER|ONLINE|HE|ADULT|boyfriend|someone ' +
      'wants|want|asked|asks|said|says|told|going|keeps|invited|wanna|tries|will|plans|offered|' +
      'know|is .. meet|see|visit|pick|marry|kiss|date|come .. ' +
      'ME|me|alone|up|him|flat|house|room|school|hotel|car|park|secret|saturday|sunday|friday|' +
      'tonight|tomorrow|tell|over; meet|meeting|meets|met|seeing|dating|date ' +
      'STRANGER|online|ONLINE|him|someone|somebody|boy|friend|HE|person .. ' +
      'alone|secret|park|grown|older|without|tell|online|internet|game|app; i|me|us meet|see ' +
      'alone|in_secret|secretly|in_real_life|irl|in_person; older|old|adult|grown|man|NUM boyfriend; ' +
      'boyfriend .. NUM|older|old|grown|internet|online|adult; ' +
      'HE|he|who|friend|is|hes|she|boyfriend|and is|he_is|be AGE; said|says|told|pretended ' +
      'he|she|was|is|him .. AGE|NUM|my_age|12|13|14|twelve|thirteen .. ' +
      'but|really|voice|beard|old|camera|older|like; voice|face|beard was|is|looked|sounded|really|a ' +
      'old|older|grown|deep|beard; get|got|gets|climb|come|sit|sat in|into|inside ' +
      'his|her|their|a|the car|van|truck ..; STRANGER|HE|car|van|man|someone ' +
      'waits|waiting|follows|followed|following|watches|stares|drives|parks|stands|sits ' +
      'for|me|outside|after|near|past|home|us|my|behind .. ' +
      'me|us|school|my|house|home|name|window|every; HE|ADULT|STRANGER|coach ' +
      'gives|gave|pays|paid|sends|sent|buys|bought|offered|offers|promised|gets ME|me ' +
      'GIFT|ticket|a|20|money|phone|things|stuff .. ' +
      'if|when|so|secret|tell|quiet|hide|not|kiss|dont|bed|keep; gives me GIFT .. when|if|and|so; ' +
      'got|have|has GIFT|phone|ticket|card .. from HE|him|man|ADULT .. ' +
      'dont|know|secret|call|hide|mum; ADULT|STRANGER|HE|someone|ONLINE ' +
      'writes|texts|messages|calls|rings|ringing|messaging|keeps|talks .. ' +
      'night|love|loves|ME|to_me|me_at|how_old|alone|strange|sexy|weird|pictures|adding|me_every|' +
      'rude; man|guy|lady|adult|stranger .. loves|likes|kissed|hugs|touches|touched|adds|adding ' +
      'me|my|us; loves me .. AGE|secret|man|send|video|older|if|online; if .. love him|her|them .. ' +
      'send|do|show|prove|video|must; where i_live|live|go_to_school .. ' +
      'HE|ask|asks|come|know|knows|wants; my address|number|school|street|password .. ' +
      'HE|man|asks|asked|wanted|wants|stranger|come|makes|gave; ' +
      'HE|ADULT|STRANGER|ONLINE|someone|friend ASK|asks|asked|wants|wanted|knows|know my ' +
      'address|number|where_i_live|password|school|street|name|bedroom; knows|know where_i_live; ' +
      'pick me_up .. after|HE|he|man|alone|friday|mature; i|I gave him|them|her my ' +
      'password|address|number|phone|picture; he|ADULT|coach comes in|into when we|i ' +
      'change|undress|shower; did what the_man|he|they_said|asked; come alone; stay|go|come ' +
      'to|at|with|in his|her flat|house|place|hotel|room|car .. ' +
      'not|tell|alone|secret|dont|night|mum; man|guy|someone|person|he|stranger in|writes|on ' +
      'my_dms|dms|my_messages; ask|asks|asked|asking .. ' +
      'home_alone|alone_at_home|are_you_alone|alone; know|knows when my_mum|my_dad|parents|mum ' +
      'works|out|away|home; meet|meeting|met someone|him|friend|HE .. parents|mum|dad ' +
      'think|dont|not|know|practice; wants|want us|me to_meet|to_come; owe|owes him|them; he|HE ' +
      'calls_me princess|beautiful|baby|special|his; drives me|us home .. last|stops|alone|woods; ' +
      'a|the van|car and .. puppy|sweets|see; when i_am|im NUM we_will|he_will|marry; will|we live ' +
      'together; answer his|her messages|calls; hotel ..; go|come to his|her ' +
      'house|place|flat|hotel|garage|room; actually|really|turned_out a|is|was man|old|grown|adult; ' +
      'buys|bought me .. owe|so|if|now|skin; gave|gives me|us a phone|secret .. talk|so|when|call; ' +
      'white|black|red|silver car|van .. me|name|follows|follow; ' +
      'lodger|babysitter|mums_friend|dads_friend .. my_room|stays|sit_with|lap|bed; in his ' +
      'car|house|room alone|with_me|again; wife isnt|is home|away',
    unless:
      `${harmless}; uncle|dad|gran|mum|aunt|grandad picks|picked|gives_me_a_lift; class_trip; ` +
      'pen_friend; dentist; library_corner; book; miss|teacher|coach gave_us|gave_everyone|told_us; ' +
      'king|queen|prince|captain|wolf; doctor; bus_driver; police; we_learned; if_a_stranger; ' +
      'policeman; tall; my_cousin; KIN .. years; ' +
      'brother|sister|cousin|grandad|gran|mum|dad|KIN|coach is|was|turns AGE; theres|hens AGE; ' +
      'it|its AGE; captain; old_dog; funny; gave_us; bully',
    example: 'my friend on the game is 34 and wants to meet me alone',
    not: 'she wants to meet the king',
  },
  {
    name: 'is blackmailed',
    when:
      'if i|I dont|not|stop|tell|say|refuse .. ' +
      'post|show|share|everyone|tell|tells|hurt|HARM|kill|send|worse|get|come|ruin|mum|dog|lose|' +
      'sends; or|else they|he|she|everyone|girls|boys|theyll|hell|i ' +
      'tell|tells|show|post|share|sends|send|say|hurt|kill|get|finish .. ' +
      'everyone|my|me|mum|school|secret|us|video|it|picture|class; or_else $; ' +
      'they|he|she|girls|boys|HE|KIDS say|says|said|want|make|makes|told|wants i|me ' +
      'have_to|must|need|to .. or|else|otherwise|if; posted|post|shared|send|show|spread .. ' +
      'IMAGE|video|secret|lies|rumours of_me|about_me|if|unless|to_everyone; makes|made ' +
      'page|account|group about|for|with me|hate; HE|they want|wants|wanted|ask money|more .. ' +
      'or|see|post|IMAGE|everyone|else; told|tells me to|i walk|jump|steal|eat|go|do .. ' +
      'or|tracks|else|otherwise|tell; he wants more; blackmail me|blackmailed|blackmailing; i ' +
      'am|being blackmailed; steal for them; or they|else|he|she TELL everyone|my|them|all; if .. ' +
      'they|he|she tell|tells|say my|the|everyone secret|everything',
    unless:
      'GAME; LOL; ^_they|he|she .. him|her|them; mum|dad|miss|teacher said; homework; screen; tidy; ' +
      'blackmails; THEIRKIN; dessert; sticker',
    example: 'they say i have to steal or they tell everyone my secret',
    not: 'mum says i have to tidy or no screen',
  },
]);
