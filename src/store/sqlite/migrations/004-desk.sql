-- What the shopkeeper's own side keeps.

-- Counts by tea and day; never of whom.
CREATE TABLE tally (
  day TEXT NOT NULL, -- in UTC
  what TEXT NOT NULL,
  item TEXT NOT NULL,
  count INTEGER NOT NULL,
  PRIMARY KEY (day, what, item)
) STRICT, WITHOUT ROWID;

-- Days whose list was told.
CREATE TABLE morning (
  day TEXT PRIMARY KEY
) STRICT, WITHOUT ROWID;
