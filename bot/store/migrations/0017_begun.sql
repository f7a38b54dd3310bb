-- Work that was begun and has not come to an end: how often, and since when.
CREATE TABLE begun (
    key TEXT PRIMARY KEY,
    tries INTEGER NOT NULL,
    since TEXT NOT NULL
);
-- What was worked and is of nobody whom we know is not kept for long.
ALTER TABLE inbox ADD COLUMN strange INTEGER NOT NULL DEFAULT 0;
CREATE INDEX inbox_strange ON inbox (received_at) WHERE strange = 1;
