-- A page for the case meeting goes to no one person: it has neither a correspondent nor an employer.
alter table letter drop constraint letter_has_one_reader;
alter table letter add constraint letter_has_one_reader check (
    (case recipient_kind when 'WORKER' then 1 when 'CASE_REVIEW' then 1 else 0 end = 1 and correspondent_id is null and employer_id is null)
    or (case recipient_kind when 'WORKER' then 1 when 'CASE_REVIEW' then 1 else 0 end = 0 and ((correspondent_id is null) <> (employer_id is null))));
