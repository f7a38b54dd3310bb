-- name: media_add
INSERT INTO media (patient_id, source, kind, file_id, file_unique, album, day, at, caption,
  person_id, line_id)
VALUES (:patient_id, :source, :kind, :file_id, :file_unique, :album, :day, :at, :caption,
  :person_id, :line_id)
ON CONFLICT (patient_id, file_unique) DO UPDATE
SET line_id = coalesce(excluded.line_id, media.line_id)
RETURNING id;

-- name: media_of
SELECT id, source, kind, file_id, file_unique, album, day, at, caption, person_id, line_id,
  state, path, verdict, retake, attempts
FROM media WHERE patient_id = :patient_id ORDER BY id;

-- name: media_kept
UPDATE media SET state = :state, path = :path, sha256 = :digest, bytes = :bytes,
  width = :width, height = :height, verdict = :verdict, error = :error,
  attempts = attempts + 1
WHERE id = :id;

-- name: media_tried
UPDATE media SET state = :state, error = :error, attempts = attempts + 1 WHERE id = :id;

-- name: media_bytes_of
SELECT coalesce(sum(bytes), 0) AS bytes FROM media
WHERE state = 'kept' AND person_id = :person_id;

-- name: media_retake
UPDATE media SET retake = 1 WHERE id = :id;

-- name: media_files
SELECT id, patient_id, path, sha256, bytes FROM media WHERE state = 'kept' ORDER BY id;

-- Each patient in turn, after the one who was last; of each the earliest.
-- name: due_media
SELECT key, patient_id, kind, due_at, data, attempts FROM due
WHERE state = 'waiting' AND due_at <= :now AND kind IN ('media', 'review')
ORDER BY CASE WHEN patient_id > :last THEN 0 ELSE 1 END, patient_id, due_at, key LIMIT 1;

-- name: review_put
INSERT INTO review (id, patient_id, line_id, shown_at, body)
VALUES (:id, :patient_id, :line_id, :now, :body)
ON CONFLICT (id) DO UPDATE SET body = excluded.body;

-- name: reviews_of
SELECT id, line_id, body FROM review WHERE patient_id = :patient_id ORDER BY id;
