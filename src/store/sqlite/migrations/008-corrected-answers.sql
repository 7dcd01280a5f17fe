-- From which question a standing answer was kept: when that answer is put right, so is what was kept of it. A number only,
-- for the question goes before the answer does.
ALTER TABLE standing_answer ADD COLUMN of_question INTEGER;
UPDATE standing_answer SET of_question = (
  SELECT id FROM question q WHERE q.answer = standing_answer.answer AND q.answered_at <= standing_answer.kept_at
  ORDER BY q.answered_at DESC LIMIT 1
);
CREATE INDEX standing_answer_of ON standing_answer (of_question) WHERE of_question IS NOT NULL;
