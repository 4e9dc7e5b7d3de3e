-- How straight quotation marks of notes are shown; nothing said means as they are typed.
ALTER TABLE project ADD COLUMN "quotes" TEXT CHECK ("quotes" IN ('as-typed', 'english', 'german', 'french', 'swiss'));
