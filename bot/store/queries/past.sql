-- What was sent and answered before the database took it in (the demo's invented practice).
-- name: outbox_past
UPDATE outbox SET state = 'sent', attempts = 1, sent_at = created_at
WHERE dedupe = :dedupe AND state = 'waiting';

-- name: inbox_past
INSERT INTO inbox (update_id, body, received_at, state, attempts)
VALUES (:update_id, :body, :at, 'done', 1);
