-- When it was found that a message waits too long, and what follows from that was done.
ALTER TABLE outbox ADD COLUMN late_at TEXT;
-- What was said of one case: asked for each of its messages that waits too long.
CREATE INDEX outbox_topic ON outbox (topic, id) WHERE topic <> '';
