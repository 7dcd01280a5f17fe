-- Lessons, who booked them, and what they are reminded of.

CREATE TABLE lesson (
  id TEXT PRIMARY KEY,
  series TEXT, -- null for one of its own
  starts TEXT NOT NULL, -- what the clock on the wall says: this is what was meant
  zone TEXT NOT NULL,
  minutes INTEGER NOT NULL,
  starts_at INTEGER NOT NULL, -- worked out from the three above …
  ends_at INTEGER NOT NULL,
  tz_version TEXT NOT NULL, -- … under these time-zone rules
  seats INTEGER NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('planned', 'moved', 'cancelled')),
  reason TEXT NOT NULL,
  revision INTEGER NOT NULL,
  moves INTEGER NOT NULL,
  words TEXT NOT NULL -- title, place, price … in every language, and the rest nobody searches by
) STRICT, WITHOUT ROWID;
CREATE INDEX lesson_ends ON lesson (ends_at);

CREATE TABLE series (
  id TEXT PRIMARY KEY,
  rule TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE booking (
  place INTEGER PRIMARY KEY AUTOINCREMENT, -- in the order of the waiting list
  id TEXT NOT NULL UNIQUE,
  lesson TEXT NOT NULL REFERENCES lesson (id),
  person INTEGER NOT NULL REFERENCES person (id),
  channel TEXT NOT NULL, -- where they are told more
  chat TEXT NOT NULL,
  seats INTEGER NOT NULL,
  standing TEXT NOT NULL CHECK (standing IN ('seated', 'waiting', 'offered', 'left')),
  enrolled_at INTEGER NOT NULL,
  offer_until INTEGER,
  answer TEXT CHECK (answer IN ('coming', 'absent')),
  came INTEGER,
  moves INTEGER NOT NULL,
  revision INTEGER NOT NULL
) STRICT;
CREATE INDEX booking_lesson ON booking (lesson, place);
CREATE INDEX booking_person ON booking (person);
CREATE INDEX booking_offered ON booking (offer_until) WHERE standing = 'offered';
-- One that is not over at a time.
CREATE UNIQUE INDEX booking_once ON booking (lesson, person) WHERE standing <> 'left';

CREATE TABLE reminder (
  booking TEXT NOT NULL REFERENCES booking (id),
  lesson TEXT NOT NULL,
  purpose TEXT NOT NULL,
  person INTEGER NOT NULL,
  moves INTEGER NOT NULL,
  due_at INTEGER NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('planned', 'sent', 'too-late', 'overtaken', 'withdrawn')),
  PRIMARY KEY (booking, lesson, purpose)
) STRICT, WITHOUT ROWID;
CREATE INDEX reminder_due ON reminder (due_at) WHERE state = 'planned';
CREATE INDEX reminder_person ON reminder (person);

-- After this instant a message is of no use: it is given up unsent.
ALTER TABLE outbox ADD COLUMN until INTEGER;
CREATE INDEX outbox_until ON outbox (until) WHERE until IS NOT NULL AND status = 'waiting';
