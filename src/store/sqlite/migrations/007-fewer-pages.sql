-- The same rows on fewer pages, for every page of a commit is waited for: one index of what arrived in the place of two, and
-- numbers that are counted on from the last row, which is therefore never pruned, instead of in a table of their own.

CREATE TABLE new_inbox (
  seq INTEGER PRIMARY KEY,
  channel TEXT NOT NULL,
  update_key BLOB NOT NULL, -- a digest of channel and update id, which may carry a chat's name
  person INTEGER REFERENCES person (id), -- null once forgotten: the key stays, so that a repeat is still seen
  chat TEXT,
  received_at INTEGER NOT NULL,
  what TEXT,
  status TEXT NOT NULL CHECK (status IN ('waiting', 'handled', 'failed')),
  tries INTEGER NOT NULL DEFAULT 0
) STRICT;
INSERT INTO new_inbox (seq, channel, update_key, person, chat, received_at, what, status, tries)
  SELECT seq, channel, update_key, person, chat, received_at, what, status, tries FROM inbox;
-- Where all was pruned, the last number stays known.
INSERT INTO new_inbox (seq, channel, update_key, received_at, status)
  SELECT seq, 'web', randomblob(16), 0, 'handled' FROM sqlite_sequence
  WHERE name = 'inbox' AND seq > coalesce((SELECT max(seq) FROM inbox), 0);
DROP TABLE inbox;
ALTER TABLE new_inbox RENAME TO inbox;
CREATE INDEX inbox_waiting ON inbox (person, seq) WHERE status = 'waiting';
CREATE UNIQUE INDEX inbox_person ON inbox (person, update_key); -- a repeat comes from the same person, or from nobody any more

CREATE TABLE new_outbox (
  seq INTEGER PRIMARY KEY,
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
  begun INTEGER NOT NULL DEFAULT 0, -- something of a sending may have reached the other side
  until INTEGER, -- after this it is of no use
  turn INTEGER, -- the order in which a chat was sent to
  language TEXT, -- as it was said
  claimed_at INTEGER,
  settled_at INTEGER,
  ref TEXT,
  why TEXT
) STRICT;
INSERT INTO new_outbox (seq, tag, person, channel, chat, saying, slot, name, priority, due, next_at, status, attempts,
    doubts, unwanted, lasting, begun, until, turn, language, claimed_at, settled_at, ref, why)
  SELECT seq, tag, person, channel, chat, saying, slot, name, priority, due, next_at, status, attempts,
    doubts, unwanted, lasting, begun, until, turn, language, claimed_at, settled_at, ref, why FROM outbox;
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
CREATE INDEX outbox_until ON outbox (until) WHERE until IS NOT NULL AND status = 'waiting';
