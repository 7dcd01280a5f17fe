-- What the shop's bot remembers. Instants are milliseconds since 1970 UTC; JSON columns hold plain values.

CREATE TABLE person (
  id INTEGER PRIMARY KEY AUTOINCREMENT, -- never given twice
  created_at INTEGER NOT NULL
) STRICT;

-- How a channel knows a person.
CREATE TABLE handle (
  channel TEXT NOT NULL,
  sender TEXT NOT NULL,
  person INTEGER NOT NULL REFERENCES person (id),
  chat TEXT NOT NULL,
  device_language TEXT,
  reachable INTEGER NOT NULL DEFAULT 1,
  PRIMARY KEY (channel, sender)
) STRICT, WITHOUT ROWID;
CREATE INDEX handle_person ON handle (person);
CREATE INDEX handle_unreachable ON handle (channel, chat) WHERE reachable = 0;

CREATE TABLE inbox (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  channel TEXT NOT NULL,
  update_key BLOB NOT NULL UNIQUE, -- a digest of channel and update id, which may carry a chat's name
  person INTEGER REFERENCES person (id), -- null once forgotten: the key stays, so that a repeat is still seen
  chat TEXT,
  received_at INTEGER NOT NULL,
  what TEXT,
  status TEXT NOT NULL CHECK (status IN ('waiting', 'handled', 'failed')),
  tries INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX inbox_waiting ON inbox (person, seq) WHERE status = 'waiting';
CREATE INDEX inbox_person ON inbox (person);

CREATE TABLE conversation (
  person INTEGER PRIMARY KEY REFERENCES person (id),
  version INTEGER NOT NULL,
  state TEXT,
  language TEXT NOT NULL,
  channel TEXT NOT NULL, -- where the person last was
  chat TEXT NOT NULL,
  updated_at INTEGER NOT NULL
) STRICT;

CREATE TABLE memory (
  person INTEGER NOT NULL REFERENCES person (id),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (person, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE wake (
  person INTEGER NOT NULL REFERENCES person (id),
  name TEXT NOT NULL,
  at INTEGER NOT NULL,
  tries INTEGER NOT NULL DEFAULT 0,
  PRIMARY KEY (person, name)
) STRICT, WITHOUT ROWID;
CREATE INDEX wake_at ON wake (at);

CREATE TABLE outbox (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  tag TEXT NOT NULL, -- random: no id can be guessed, nor met again after a restore
  person INTEGER NOT NULL REFERENCES person (id),
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
  turn INTEGER, -- the order in which a chat was sent to
  language TEXT, -- as it was said
  claimed_at INTEGER,
  settled_at INTEGER,
  ref TEXT,
  why TEXT
) STRICT;
CREATE INDEX outbox_waiting ON outbox (priority, due, seq) WHERE status = 'waiting';
CREATE INDEX outbox_retry ON outbox (channel, chat, next_at) WHERE status = 'waiting' AND next_at > due;
CREATE INDEX outbox_sending ON outbox (channel, chat) WHERE status = 'sending';
CREATE INDEX outbox_held ON outbox (channel, chat) WHERE status = 'held';
CREATE INDEX outbox_named ON outbox (person, name) WHERE name IS NOT NULL AND status IN ('waiting', 'held', 'sending');
CREATE INDEX outbox_slot ON outbox (channel, chat, slot, turn) WHERE slot IS NOT NULL;
CREATE INDEX outbox_turn ON outbox (channel, chat, turn);
CREATE INDEX outbox_person ON outbox (person);

CREATE TABLE task (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  person INTEGER NOT NULL REFERENCES person (id),
  task TEXT NOT NULL,
  facts TEXT NOT NULL,
  status TEXT NOT NULL DEFAULT 'open' CHECK (status IN ('open', 'closed')),
  created_at INTEGER NOT NULL
) STRICT;
CREATE INDEX task_person ON task (person);
CREATE INDEX task_open ON task (seq) WHERE status = 'open';
