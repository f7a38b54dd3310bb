-- Who made a chat a staff chat (an account of the platform's), and since when nothing is sent
-- there, because that member was removed, until an administrator says so.
ALTER TABLE desk ADD COLUMN opened_by INTEGER;
ALTER TABLE desk ADD COLUMN held_at TEXT;
UPDATE desk SET opened_by = CASE WHEN chat_id > 0 THEN chat_id ELSE (
  SELECT i.used_by FROM invitation AS i
  WHERE i.kind = 'desk' AND i.used_at = desk.joined_at LIMIT 1) END;
-- Whether a message goes to a staff chat (1) or to a member's own chat (2): asked again when it
-- is sent.
ALTER TABLE outbox ADD COLUMN staff INTEGER NOT NULL DEFAULT 0;
UPDATE outbox SET staff = CASE WHEN chat_id IN (SELECT chat_id FROM desk) THEN 1 ELSE 2 END
WHERE chat_id IN (SELECT chat_id FROM desk
    UNION ALL SELECT chat_id FROM staff WHERE chat_id IS NOT NULL)
  AND NOT EXISTS (
    SELECT 1 FROM person AS p JOIN caregiver AS c ON c.person_id = p.id
    WHERE p.chat_id = outbox.chat_id AND c.patient_id = outbox.patient_id);
