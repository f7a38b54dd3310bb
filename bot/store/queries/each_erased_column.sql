-- Once for each column of these tables that may name somebody.

-- name: erase_set
UPDATE {table} AS t SET {column} = :value WHERE {key} = :erase_key;
