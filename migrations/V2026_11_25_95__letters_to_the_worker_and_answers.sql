-- A letter to the worker has neither a correspondent nor an employer.
alter table letter drop constraint letter_has_one_reader;
alter table letter add constraint letter_has_one_reader check (
    (recipient_kind = 'WORKER' and correspondent_id is null and employer_id is null)
    or (recipient_kind <> 'WORKER' and ((correspondent_id is null) <> (employer_id is null))));

-- A wrong letter is put right by a second one, which says which one it replaces.
alter table letter add column replaces_id bigint;
alter table letter add constraint letter_replaces_fk foreign key (replaces_id) references letter (id);
alter table letter_history add column replaces_id bigint;
create index letter_replaces on letter (replaces_id);

-- The day by which an answer to a sent letter is hoped for.
alter table letter_event add column reply_by date;
create index letter_event_reply_by on letter_event (reply_by);
