-- The log becomes a chain: see bot/records/chain.py. Rows from before are sealed in steps.py.
-- salt: of the words as they are now; digest: of the words as they were first written;
-- erased_in: the entry that records their erasure.
ALTER TABLE log ADD COLUMN salt TEXT NOT NULL DEFAULT '';
ALTER TABLE log ADD COLUMN digest TEXT NOT NULL DEFAULT '';
ALTER TABLE log ADD COLUMN prev_hash TEXT NOT NULL DEFAULT '';
ALTER TABLE log ADD COLUMN hash TEXT NOT NULL DEFAULT '';
ALTER TABLE log ADD COLUMN erased_in INTEGER;
