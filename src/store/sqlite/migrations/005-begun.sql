-- Whether anything of a sending can have reached the other side; until then it is only being prepared.
ALTER TABLE outbox ADD COLUMN begun INTEGER NOT NULL DEFAULT 0;
-- How far those under way had come is not known.
UPDATE outbox SET begun = 1 WHERE status = 'sending';
