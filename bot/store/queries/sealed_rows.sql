-- name: touched_tables
SELECT DISTINCT name FROM touched WHERE strange = 0 ORDER BY name;

-- Noted in this transaction, a batch at a time; a row may be noted more than once.
-- name: touched_batch
SELECT max(number) AS last FROM (SELECT id AS number FROM touched
  WHERE id > :after AND name = :name AND strange = 0 ORDER BY id LIMIT :most) AS batch;

-- name: touched_before
SELECT DISTINCT t.key, s.salt, s.digest FROM touched AS t
LEFT JOIN sealed_row AS s ON s.name = t.name AND s.key = t.key
WHERE t.id > :after AND t.id <= :last AND t.name = :name
  AND t.key NOT IN (SELECT key FROM touched WHERE strange = 1 AND name = :name)
ORDER BY t.key;

-- name: touched_clear
DELETE FROM touched WHERE strange = 0;

-- name: touched_strange
UPDATE touched SET strange = 1 WHERE strange = 0;

-- name: sealed_put
INSERT INTO sealed_row (name, key, salt, digest) VALUES (:name, :key, :salt, :digest)
ON CONFLICT (name, key) DO UPDATE SET salt = excluded.salt, digest = excluded.digest;

-- name: sealed_drop
DELETE FROM sealed_row WHERE name = :name AND key = :key;

-- name: sealed_of
SELECT digest FROM sealed_row WHERE name = :name;

-- name: sealed_sum
SELECT sum FROM sealed_sum WHERE name = :name;

-- name: sealed_sum_put
INSERT INTO sealed_sum (name, sum) VALUES (:name, :sum)
ON CONFLICT (name) DO UPDATE SET sum = excluded.sum;
