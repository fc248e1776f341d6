-- A page for the case meeting goes to no one person: it has neither a correspondent nor an employer.
alter table letter drop constraint letter_has_one_reader;
alter table letter add constraint letter_has_one_reader check (
    (recipient_kind in ('WORKER', 'CASE_REVIEW') and correspondent_id is null and employer_id is null)
    or (recipient_kind not in ('WORKER', 'CASE_REVIEW') and ((correspondent_id is null) <> (employer_id is null))));
