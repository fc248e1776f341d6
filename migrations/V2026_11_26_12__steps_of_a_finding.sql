-- Every step of a finding is kept, also one that was a mistake: it is undone with a reason, never removed.
create sequence workplace_finding_step_seq increment by 50;
create table workplace_finding_step (
    id bigint not null,
    finding_id bigint not null,
    stage varchar(20) not null,
    stepped_on date not null,
    agreed_with varchar(200),
    recorded_by varchar(160),
    recorded_at timestamp with time zone,
    undone_by varchar(160),
    undone_at timestamp with time zone,
    undo_reason varchar(300),
    constraint workplace_finding_step_pk primary key (id),
    constraint workplace_finding_step_finding_fk foreign key (finding_id) references workplace_finding (id),
    constraint workplace_finding_step_undone_with_reason check (undone_at is null or undo_reason is not null)
);
create index workplace_finding_step_finding on workplace_finding_step (finding_id);

-- What was recorded before the steps were kept: who and at what moment is not known.
insert into workplace_finding_step (id, finding_id, stage, stepped_on)
    select nextval('workplace_finding_step_seq'), id, 'ADVISED', advised_on from workplace_finding where advised_on is not null;
insert into workplace_finding_step (id, finding_id, stage, stepped_on, agreed_with)
    select nextval('workplace_finding_step_seq'), id, 'AGREED', agreed_on, agreed_with from workplace_finding where agreed_on is not null;
insert into workplace_finding_step (id, finding_id, stage, stepped_on)
    select nextval('workplace_finding_step_seq'), id, 'DONE', done_on from workplace_finding where done_on is not null;
insert into workplace_finding_step (id, finding_id, stage, stepped_on)
    select nextval('workplace_finding_step_seq'), id, 'CHECKED', checked_on from workplace_finding where checked_on is not null;
