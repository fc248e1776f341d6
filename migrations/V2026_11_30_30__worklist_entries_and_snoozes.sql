-- What stands on Today, and what left it: one row for one thing in one case, standing while cleared_at is empty.
create sequence worklist_entry_seq increment by 50;
create table worklist_entry (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    rule varchar(60) not null,
    subject varchar(80) not null,
    urgency smallint not null,
    place integer not null,
    level integer not null,
    since_on date not null,
    label varchar(120) not null,
    reason varchar(2000) not null,
    action varchar(120) not null,
    mark varchar(10) not null,
    href varchar(200) not null,
    facts text not null,
    put_off_until date,
    first_seen_at timestamp(6) with time zone not null,
    cleared_on date,
    cleared_at timestamp(6) with time zone,
    cleared_act varchar(400),
    constraint worklist_entry_pk primary key (id),
    constraint worklist_entry_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint worklist_entry_one_a_thing unique (case_file_id, rule, subject),
    constraint worklist_entry_urgency_known check (urgency between 0 and 2),
    constraint worklist_entry_cleared_wholly check ((cleared_at is null) = (cleared_on is null))
);
create index worklist_entry_order on worklist_entry (cleared_on, place, since_on, id);

-- An entry put off: kept with who, when, why and until when, and with what ended it.
create sequence worklist_snooze_seq increment by 50;
create table worklist_snooze (
    id bigint not null,
    version integer not null,
    entry_id bigint not null,
    reason varchar(300) not null,
    back_on date not null,
    urgency smallint not null,
    level integer not null,
    snoozed_by_id bigint not null,
    snoozed_at timestamp(6) with time zone not null,
    ended_at timestamp(6) with time zone,
    ended_by varchar(60),
    ended_why varchar(200),
    constraint worklist_snooze_pk primary key (id),
    constraint worklist_snooze_entry_fk foreign key (entry_id) references worklist_entry (id),
    constraint worklist_snooze_by_fk foreign key (snoozed_by_id) references account (id),
    constraint worklist_snooze_ended_with_reason check ((ended_at is null) = (ended_why is null))
);
create index worklist_snooze_entry on worklist_snooze (entry_id, ended_at);
create index worklist_snooze_open on worklist_snooze (ended_at, back_on);

-- How far the list has been brought up to date: for which day, when all cases were last looked at, up to which line of the audit trail.
create table worklist_state (
    id integer not null,
    shown_on date,
    whole_at timestamp(6) with time zone,
    last_event_id bigint not null,
    constraint worklist_state_pk primary key (id),
    constraint worklist_state_one check (id = 1)
);
insert into worklist_state (id, last_event_id) values (1, 0);

create index audit_event_case on audit_event (case_file_id, id);
