-- name: log_last
SELECT id, hash, at FROM log ORDER BY id DESC LIMIT 1;

-- name: log_kind
SELECT kind FROM log WHERE id = :id;

-- name: log_chain
SELECT id, patient_id, at, kind, author, text, data, salt, digest, prev_hash, hash, erased_in,
  event, person_id, member_id
FROM log WHERE id > :after ORDER BY id LIMIT :most;

-- Of a log from before the seals: it has no more columns than these.
-- name: log_unsealed
SELECT id, patient_id, at, kind, author, text, data FROM log
WHERE id > :after ORDER BY id LIMIT :most;

-- name: log_seal
UPDATE log SET salt = :salt, digest = :digest, prev_hash = :prev, hash = :hash WHERE id = :id;

-- name: patient_ids
SELECT id FROM patient ORDER BY id;

-- name: noted_of
SELECT id, data FROM log WHERE patient_id = :patient_id AND kind = 'noted' ORDER BY id;

-- name: observations_kept
SELECT id, source, body FROM observation WHERE patient_id = :patient_id ORDER BY id;

-- The message of a key, and those that had it before (`in_time.hand_on`).
-- name: outbox_of
SELECT body, created_at FROM outbox
WHERE dedupe = :dedupe OR (dedupe > :dedupe || ':late:' AND dedupe < :dedupe || ':late;');

-- name: inbox_of
SELECT received_at FROM inbox WHERE update_id = :update_id;
