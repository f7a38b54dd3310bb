-- How often one sender was refused, or failed, within the hour that began at since.
CREATE TABLE turned_away (
    sender INTEGER PRIMARY KEY,
    since TEXT NOT NULL,
    count INTEGER NOT NULL
);
