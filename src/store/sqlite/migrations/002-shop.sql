-- The shop's side: who is shopkeeper, what was asked and answered, and what is kept as a standing answer.

-- A handle, not a person: the settings name people the house has not met yet.
CREATE TABLE shopkeeper (
  channel TEXT NOT NULL,
  sender TEXT NOT NULL,
  by TEXT NOT NULL CHECK (by IN ('settings', 'code')),
  since INTEGER NOT NULL,
  PRIMARY KEY (channel, sender)
) STRICT, WITHOUT ROWID;

-- The one-time code that makes a shopkeeper: its digest only. A new one takes the place of the old.
CREATE TABLE shop_code (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  salt BLOB NOT NULL,
  digest BLOB NOT NULL,
  expires_at INTEGER NOT NULL,
  tries INTEGER NOT NULL DEFAULT 0,
  used INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE question (
  id INTEGER PRIMARY KEY, -- the number of the incoming it came with
  person INTEGER NOT NULL REFERENCES person (id),
  channel TEXT NOT NULL, -- where it was asked, and is answered
  chat TEXT NOT NULL,
  language TEXT NOT NULL,
  text TEXT NOT NULL,
  asked_at INTEGER NOT NULL,
  answer TEXT, -- null while it waits
  answered_at INTEGER,
  answered_by INTEGER REFERENCES person (id) -- null again once that shopkeeper is forgotten
) STRICT;
CREATE INDEX question_waiting ON question (id) WHERE answer IS NULL;
CREATE INDEX question_person ON question (person);
CREATE INDEX question_answered_by ON question (answered_by) WHERE answered_by IS NOT NULL;

CREATE TABLE standing_answer (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  question TEXT NOT NULL,
  answer TEXT NOT NULL,
  person INTEGER REFERENCES person (id), -- whose words the question is in; it goes when they are forgotten
  kept_at INTEGER NOT NULL
) STRICT;
CREATE INDEX standing_answer_person ON standing_answer (person) WHERE person IS NOT NULL;

-- A message may outlive its person: the last one after forgetting, which goes once it is sent.
CREATE TABLE new_outbox (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  tag TEXT NOT NULL, -- random: no id can be guessed, nor met again after a restore
  person INTEGER REFERENCES person (id), -- null: a last word, dropped as soon as it is settled
  channel TEXT NOT NULL,
  chat TEXT NOT NULL,
  saying TEXT NOT NULL,
  slot TEXT,
  name TEXT,
  priority INTEGER NOT NULL,
  due INTEGER NOT NULL, -- as promised
  next_at INTEGER NOT NULL, -- when to try; later than due after a failure
  status TEXT NOT NULL CHECK (status IN ('waiting', 'held', 'sending', 'sent', 'withdrawn', 'overtaken', 'gave-up')),
  attempts INTEGER NOT NULL DEFAULT 0,
  doubts INTEGER NOT NULL DEFAULT 0, -- sendings that may have arrived
  unwanted INTEGER NOT NULL DEFAULT 0, -- withdrawn while it was being sent
  lasting INTEGER NOT NULL DEFAULT 0, -- never stale: waits for a person who cannot be reached
  turn INTEGER, -- the order in which a chat was sent to
  language TEXT, -- as it was said
  claimed_at INTEGER,
  settled_at INTEGER,
  ref TEXT,
  why TEXT
) STRICT;
INSERT INTO new_outbox (seq, tag, person, channel, chat, saying, slot, name, priority, due, next_at, status, attempts,
    doubts, unwanted, turn, language, claimed_at, settled_at, ref, why)
  SELECT seq, tag, person, channel, chat, saying, slot, name, priority, due, next_at, status, attempts,
    doubts, unwanted, turn, language, claimed_at, settled_at, ref, why FROM outbox;
DELETE FROM sqlite_sequence WHERE name = 'new_outbox';
INSERT INTO sqlite_sequence (name, seq) SELECT 'new_outbox', seq FROM sqlite_sequence WHERE name = 'outbox';
DROP TABLE outbox;
ALTER TABLE new_outbox RENAME TO outbox;
CREATE INDEX outbox_waiting ON outbox (priority, due, seq) WHERE status = 'waiting';
CREATE INDEX outbox_retry ON outbox (channel, chat, next_at) WHERE status = 'waiting' AND next_at > due;
CREATE INDEX outbox_sending ON outbox (channel, chat) WHERE status = 'sending';
CREATE INDEX outbox_held ON outbox (channel, chat) WHERE status = 'held';
CREATE INDEX outbox_named ON outbox (person, name) WHERE name IS NOT NULL AND status IN ('waiting', 'held', 'sending');
CREATE INDEX outbox_slot ON outbox (channel, chat, slot, turn) WHERE slot IS NOT NULL;
CREATE INDEX outbox_turn ON outbox (channel, chat, turn);
CREATE INDEX outbox_person ON outbox (person);
