-- Once for each table of which an erasure takes something out alike (bot/store/erase_table.py).

-- name: erase_of
SELECT {key} AS erase_key, t.* FROM {table} AS t WHERE {patient} = :patient_id;

-- name: erase_loose
SELECT {key} AS erase_key, t.* FROM {table} AS t WHERE {loose};

-- name: erase_row
DELETE FROM {table} AS t WHERE {key} = :erase_key;
