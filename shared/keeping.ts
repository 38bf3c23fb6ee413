/** A table of the store as far as people are concerned. */
export interface KeptTable {
  readonly columns: readonly string[];
  /** The column that names the person whose row it is, null where rows are nobody's. */
  readonly person: string | null;
  /** Whether `export` gives a person's rows, or why it doesn't. */
  readonly exported: true | string;
}

/** One kind of thing that is kept: for staff in a row of a table, for families in plain sentences; null where there is nothing to tell them. */
export interface Kept {
  readonly what: string;
  readonly why: string;
  readonly howLong: string;
  readonly who: string;
  readonly families: string | null;
  readonly tables: Readonly<Record<string, KeptTable>>;
}

const nobodys = 'it is nobody’s own';

/** Everything that is kept; a test compares it with the database, column by column. The numbers are the settings' defaults. */
export const keeping: readonly Kept[] = [
  {
    what: 'What people write: posts, meanings, notes to a post',
    why: 'so that the group can talk about the text, and adults can see how reading goes',
    howLong:
      'to the end of term and 14 days (settings “term ends”, “words kept”); where no end of term is ahead, 120 days (“longest kept”); never more than 366 days. Then the number of the post stays and says that its words are gone',
    who: 'the group, once a post is through; tutor and teacher at once',
    families:
      'What your child writes about a text. The group reads it, and the tutor and the teacher. It is deleted 14 days after the end of term, or after 120 days where the school has not set an end of term.',
    tables: {
      said: {
        columns: ['class_id', 'version', 'n', 'what', 'person', 'about', 'at', 'text', 'gone', 'sum'],
        person: 'person',
        exported: true,
      },
    },
  },
  {
    what: 'Nicknames, roles, groups, goals, how much help somebody gets; and the class with its settings and passages',
    why: 'a class cannot be run without them',
    howLong: 'until the person is erased; `/roster remove` alone deletes nothing',
    who: 'the class; the roster: tutor, teacher, administrator',
    families:
      'A nickname, and which group your child is in. No real name, no birth date, no address, no photo, no voice. They stay until the school erases them.',
    tables: {
      event: {
        columns: ['class_id', 'version', 'type', 'form', 'at', 'body', 'sum'],
        person: null,
        exported: true,
      },
      class: { columns: ['class_id', 'version', 'due_at'], person: null, exported: nobodys },
      post: { columns: ['class_id', 'post', 'person'], person: 'person', exported: true },
    },
  },
  {
    what: 'Levels: how a post was judged, and by whom',
    why: 'so that the tutor sees who needs help with what',
    howLong:
      'to the end of the school year, 31 July (setting “year ends”); then they are deleted from the evidence and from the journal, with the ids of updates and of messages sent',
    who: 'tutor and teacher; a pupil sees the feedback on their own posts',
    families:
      'How your child’s questions and other posts were judged. Only the tutor and the teacher see it. It is deleted at the end of the school year, 31 July if the school has not set another day. It is no mark and no diagnosis.',
    tables: {
      evidence: {
        columns: ['class_id', 'key', 'person', 'group_id', 'passage', 'at', 'body', 'sum'],
        person: 'person',
        exported: true,
      },
    },
  },
  {
    what: 'Messages that the bot has shown, and its answers to what somebody pressed',
    why: 'so that a page can be read again, and nothing is done twice',
    howLong:
      'as long as the words of their day; newer ones that repeat words which go, go with them. Of an answer, whether it was done stays to the end of the school year',
    who: 'those whom a message is for; tutor and teacher see all but what is for another adult',
    families: null,
    tables: {
      shown: {
        columns: ['class_id', 'key', 'seq', 'audience_to', 'audience_id', 'at', 'message', 'look'],
        person: 'audience_id',
        exported: true,
      },
      inbox: {
        columns: ['class_id', 'update_id', 'at', 'reply'],
        person: null,
        exported: 'an answer repeats messages that are given',
      },
      about: {
        columns: ['class_id', 'what', 'key', 'person'],
        person: 'person',
        exported: 'it only says which messages and answers are about whom, so that they can be erased',
      },
    },
  },
  {
    what: 'Messages on their way to Discord or Slack, and where they were put',
    why: 'so that none is lost or said twice, and each can be taken back',
    howLong:
      'the words until a message has arrived; its number there to the end of the school year. When words go here, their messages are taken back on the platform, as far as it lets us; what the platform itself keeps is under its own rules',
    who: 'those who see that place on the platform',
    families:
      'Where a class uses Discord or Slack, the messages stand there too. They are taken back there when their time is over. The company that runs the platform may keep more; ask the school about it.',
    tables: {
      outbox: {
        columns: [
          ...['key', 'seq', 'class_id', 'message_key', 'channel', 'tenant', 'room', 'does', 'state', 'at'],
          ...['telling', 'sending_at', 'platform_id', 'why', 'practice'],
        ],
        person: null,
        exported: 'it repeats messages that are given',
      },
      place: {
        columns: ['class_id', 'channel', 'tenant', 'room', 'audience_to', 'audience_id'],
        person: 'audience_id',
        exported: true,
      },
    },
  },
  {
    what: 'The exact words of an alarm, and who looked at them when',
    why: 'so that the safeguarding lead can act, and it can be seen who read them',
    howLong:
      'sealed; one year after the end of the school year in which it was raised (setting “alarm words kept”). The school’s own policy comes first. That there was an alarm stays in the journal',
    who: 'the safeguarding lead, and the deputy of an alarm that went on to them; each look is on record',
    families:
      'If your child writes something that worries the bot, the exact words are sealed. Only the adults who look after children’s safety at the school can read them, and each time is on record. They are kept for one year after the school year, or as long as the school’s policy says.',
    tables: {
      sealed: {
        columns: ['ref', 'class_id', 'person', 'at', 'text', 'sum'],
        person: 'person',
        exported:
          'that there are sealed words is given, and not the words: the safeguarding lead decides on those',
      },
      sealed_look: {
        columns: ['ref', 'by_person', 'at'],
        person: 'by_person',
        exported: true,
      },
    },
  },
  {
    what: 'Ways in: slips, links, second keys, sessions, who somebody is on a platform; of secrets only a hash',
    why: 'so that only people of the class come in',
    howLong:
      'a slip and a session until they have run out (120 days for a pupil, 14 days for an adult); the rest until it is changed or the person is erased',
    who: 'nobody; the roster says whether there is a slip',
    families:
      'A code on a slip of paper lets your child in. We keep it in a form that cannot be read back. It stops working after 120 days.',
    tables: {
      slip: {
        columns: ['hash', 'class_id', 'person', 'made_at', 'expires_at', 'revoked'],
        person: 'person',
        exported: true,
      },
      second_key: {
        columns: ['class_id', 'person', 'kind', 'hash', 'misses', 'missed_at'],
        person: 'person',
        exported: true,
      },
      session: {
        columns: ['id', 'class_id', 'person', 'started_at', 'seen_at', 'expires_at'],
        person: 'person',
        exported: true,
      },
      identity: {
        columns: ['channel', 'tenant', 'user_id', 'class_id', 'person'],
        person: 'person',
        exported: true,
      },
    },
  },
  {
    what: 'That somebody was erased: two ids, in the database and in the file `erased` beside it',
    why: 'so that an older backup that is put back is erased again',
    howLong: 'as long as the data folder; without the data the ids say nothing',
    who: 'whoever has the data folder',
    families: null,
    tables: {
      erasure: {
        columns: ['class_id', 'person', 'asked_at', 'done_at'],
        person: 'person',
        exported: 'who is erased has nothing to be given',
      },
    },
  },
  {
    what: 'Numbers of the program itself, the key in the file `key`, and the tokens of Slack workspaces that installed it',
    why: 'so that it knows what it has done; the key signs cookies and seals the tokens, with which the bot speaks there',
    howLong: 'as long as the data folder; a token until its workspace takes the app away',
    who: 'whoever has the data folder',
    families: null,
    tables: {
      migration: { columns: ['number', 'name', 'at'], person: null, exported: nobodys },
      note: { columns: ['name', 'value'], person: null, exported: nobodys },
      counter: { columns: ['name', 'value'], person: null, exported: nobodys },
    },
  },
  {
    what: 'In the browser: one cookie for the session, one for how the page looks; a draft',
    why: 'so that somebody stays signed in and loses no draft',
    howLong:
      'the session as above, on a shared device to the end of the sitting; a draft until it is sent or its writer signs out, on a shared device only as long as its tab',
    who: 'whoever uses that browser',
    families:
      'In the browser: that your child is signed in, how the page looks, and a draft that is not sent yet. Signing out removes the draft.',
    tables: {},
  },
  {
    what: 'Backups that the school makes, and the log',
    why: 'so that a broken disk loses nothing; the log holds ids and numbers, never words',
    howLong:
      'until the school deletes them: a backup made before something went or was erased still holds it. `restore` erases again whom the file `erased` names, and what has had its time goes at the next start',
    who: 'whoever has the file',
    families:
      'The school makes copies in case a disk breaks. A copy made before something was deleted still holds it until the school deletes the copy too.',
    tables: {},
  },
];

/** What families are told beside the table. */
export const keepingForFamilies = {
  title: 'What is kept',
  first:
    'This bot helps children practise reading together. It runs on the school’s own computer. There is no advertising, and nothing is sold or sent to us.',
  adults: 'An adult sees everything that a child writes. No message is hidden from the tutor.',
  show: 'You may see all that is held on your child. Ask the school: it can print it.',
  erase:
    'You may have it erased. Ask the school: everything that is held on your child is then deleted for good. Copies that the school made before still hold it until they are deleted, or put back and erased again.',
  settings:
    'The numbers of days are those that a new class starts with. The school may have set others; ask it.',
} as const;
