-- Once for each sealed table: {table}, whose rows are named by {key} (bot/store/sql.py).

-- name: touch_all
INSERT INTO touched (name, key) SELECT '{table}', {key} FROM {table} AS t;

-- name: touched_rows
SELECT CAST({key} AS TEXT) AS sealed_key, t.* FROM {table} AS t
WHERE {key} IN (SELECT key FROM touched
  WHERE id > :after AND id <= :last AND name = '{table}');

-- name: sealed_rows
SELECT CAST({key} AS TEXT) AS sealed_key, s.salt AS sealed_salt, s.digest AS sealed_digest, t.*
FROM {table} AS t
LEFT JOIN sealed_row AS s ON s.name = '{table}' AND s.key = CAST({key} AS TEXT);

-- name: sealed_lost
SELECT key FROM sealed_row
WHERE name = '{table}' AND key NOT IN (SELECT CAST({key} AS TEXT) FROM {table} AS t)
ORDER BY key;
