-- When the bot itself last held a message back: until then nothing hindered it.
ALTER TABLE outbox ADD COLUMN held_at TEXT;
