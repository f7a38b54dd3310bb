-- name: setting
SELECT value FROM setting WHERE key = :key;

-- name: setting_put
INSERT INTO setting (key, value) VALUES (:key, :value)
ON CONFLICT (key) DO UPDATE SET value = excluded.value;

-- name: setting_first
INSERT INTO setting (key, value) VALUES (:key, :value) ON CONFLICT (key) DO NOTHING;

-- name: setting_drop
DELETE FROM setting WHERE key = :key;

-- name: person_of_user
SELECT id, user_id, chat_id, name, lang, reachable FROM person WHERE user_id = :user_id;

-- name: person_join
INSERT INTO person (user_id, chat_id, name, lang, joined_at)
VALUES (:user_id, :chat_id, :name, :lang, :now)
ON CONFLICT (user_id) DO UPDATE SET chat_id = excluded.chat_id, reachable = 1
RETURNING id;

-- name: person_reachable
UPDATE person SET reachable = :reachable WHERE chat_id = :chat_id;

-- name: person_lang
UPDATE person SET lang = :lang WHERE id = :id;

-- name: people_of_patient
SELECT p.id, p.user_id, p.chat_id, p.name, p.lang, p.reachable, c.hours, c.wants
FROM caregiver AS c JOIN person AS p ON p.id = c.person_id
WHERE c.patient_id = :patient_id AND c.left_at IS NULL ORDER BY c.joined_at, p.id;

-- name: patients_of_person
SELECT c.patient_id FROM caregiver AS c JOIN patient AS p ON p.id = c.patient_id
WHERE c.person_id = :person_id AND c.left_at IS NULL ORDER BY p.state, c.patient_id;

-- name: caregiver_join
INSERT INTO caregiver (patient_id, person_id, joined_at) VALUES (:patient_id, :person_id, :now)
ON CONFLICT (patient_id, person_id) DO UPDATE SET left_at = NULL;

-- name: caregiver_leave
UPDATE caregiver SET left_at = :now WHERE patient_id = :patient_id AND person_id = :person_id;

-- Those to which is sent (held = 0), or those to which nothing is sent until an administrator
-- says so.
-- name: desks
SELECT d.chat_id, d.rank, d.name, d.opened_by, l.since AS lost FROM desk AS d
LEFT JOIN lost_chat AS l ON l.chat_id = d.chat_id
WHERE (d.held_at IS NOT NULL) = :held ORDER BY d.rank, d.chat_id;

-- A chat that is there already is changed by no code.
-- name: desk_join
INSERT INTO desk (chat_id, rank, name, joined_at, opened_by)
VALUES (:chat_id, :rank, :name, :now, :opened_by)
ON CONFLICT (chat_id) DO NOTHING;

-- name: desk_hold
UPDATE desk SET held_at = :now WHERE chat_id = :chat_id;

-- name: desk_keep
UPDATE desk SET held_at = NULL, opened_by = :opened_by WHERE chat_id = :chat_id;

-- 1: a staff chat; 2: a member's own and no staff chat.
-- name: chat_of_staff
SELECT min(kind) AS kind FROM (
  SELECT 1 AS kind FROM desk WHERE chat_id = :chat_id AND held_at IS NULL
  UNION ALL SELECT 2 FROM staff WHERE chat_id = :chat_id AND removed_at IS NULL) AS kinds;

-- name: staff_chats_of
SELECT user_id AS chat_id FROM staff WHERE id = :id
UNION SELECT chat_id FROM staff WHERE id = :id AND chat_id IS NOT NULL;

-- name: desk_move
UPDATE desk SET chat_id = :new WHERE chat_id = :old;

-- name: staff
SELECT s.id, s.user_id, s.chat_id, s.name, s.role, l.since AS lost FROM staff AS s
LEFT JOIN lost_chat AS l ON l.chat_id = s.chat_id WHERE s.removed_at IS NULL ORDER BY s.id;

-- name: lost_put
INSERT INTO lost_chat (chat_id, since, why) VALUES (:chat_id, :now, :why)
ON CONFLICT (chat_id) DO NOTHING;

-- name: lost_drop
DELETE FROM lost_chat WHERE chat_id = :chat_id;

-- name: staff_join
INSERT INTO staff (user_id, chat_id, name, role, joined_at)
VALUES (:user_id, :chat_id, :name, :role, :now)
ON CONFLICT (user_id) DO UPDATE SET
  name = CASE WHEN staff.removed_at IS NULL THEN staff.name ELSE excluded.name END,
  role = CASE WHEN staff.removed_at IS NULL THEN staff.role ELSE excluded.role END,
  chat_id = coalesce(excluded.chat_id, staff.chat_id), removed_at = NULL;

-- name: staff_remove
UPDATE staff SET removed_at = :now WHERE id = :id;

-- name: invitation_void_of
UPDATE invitation SET used_at = :now WHERE member_id = :id AND used_at IS NULL;

-- name: staff_role
UPDATE staff SET role = :role WHERE id = :id;

-- name: desk_close
DELETE FROM desk WHERE chat_id = :chat_id;

-- name: invitation
SELECT digest, kind, patient_id, rank, name, role, member_id, expires_at, used_at FROM invitation
WHERE digest = :digest;

-- name: invitation_add
INSERT INTO invitation
  (digest, kind, patient_id, rank, name, role, member_id, made_at, made_by, expires_at)
VALUES (:digest, :kind, :patient_id, :rank, :name, :role, :member_id, :now, :made_by,
  :expires_at);

-- name: invitation_use
UPDATE invitation SET used_at = :now, used_by = :used_by
WHERE digest = :digest AND used_at IS NULL;

-- name: name_of_chat
SELECT name, staff FROM (
  SELECT name, 0 AS staff, chat_id FROM person
  UNION ALL SELECT 'staff' AS name, 1 AS staff, chat_id FROM desk) AS chats
WHERE chat_id = :chat_id ORDER BY staff DESC LIMIT 1;

-- name: name_at_home
SELECT name FROM person WHERE chat_id = :chat_id;

-- name: caregiver_setting
UPDATE caregiver SET hours = coalesce(:hours, hours), wants = coalesce(:wants, wants)
WHERE patient_id = :patient_id AND person_id = :person_id;

-- name: caregiver_leave_all
UPDATE caregiver SET left_at = coalesce(left_at, :now) WHERE person_id = :person_id;

-- name: caregivers_carry
INSERT INTO caregiver (patient_id, person_id, joined_at, hours, wants)
SELECT :new, person_id, :now, hours, wants FROM caregiver
WHERE patient_id = :old AND left_at IS NULL;

-- name: desk_remove_of
DELETE FROM desk WHERE chat_id IN (SELECT user_id FROM staff WHERE id = :id
  UNION ALL SELECT chat_id FROM staff WHERE id = :id);

-- name: turned_away
SELECT since, count FROM turned_away WHERE sender = :sender;

-- name: turned_away_put
INSERT INTO turned_away (sender, since, count) VALUES (:sender, :since, :count)
ON CONFLICT (sender) DO UPDATE SET since = excluded.since, count = excluded.count;

-- name: turned_away_past
DELETE FROM turned_away WHERE since < :before;

-- name: cares_for
SELECT p.id FROM person AS p JOIN caregiver AS c ON c.person_id = p.id
JOIN patient AS a ON a.id = c.patient_id AND a.state <> 'ended'
WHERE p.user_id = :user_id AND c.left_at IS NULL LIMIT 1;

-- By one that is past its time nobody comes in any more.
-- name: invitations_until
SELECT digest FROM invitation WHERE expires_at > :since;
