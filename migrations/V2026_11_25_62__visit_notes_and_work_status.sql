create sequence visit_note_seq increment by 50;
create table visit_note (
    id bigint not null,
    version integer not null,
    visit_id bigint not null,
    subjective text,
    objective text,
    assessment text,
    plan text,
    drafted_by varchar(120) not null,
    drafted_at timestamp with time zone not null,
    signed_by_id bigint,
    signed_by varchar(200),
    signed_at timestamp with time zone,
    constraint visit_note_pk primary key (id),
    constraint visit_note_visit_fk foreign key (visit_id) references visit (id),
    constraint visit_note_signed_by_fk foreign key (signed_by_id) references account (id),
    constraint visit_note_one_a_visit unique (visit_id),
    constraint visit_note_signed_wholly check ((signed_at is null) = (signed_by is null))
);
create index visit_note_unsigned on visit_note (signed_at);

create table visit_note_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    visit_id bigint,
    subjective text,
    objective text,
    assessment text,
    plan text,
    drafted_by varchar(120),
    drafted_at timestamp with time zone,
    signed_by_id bigint,
    signed_by varchar(200),
    signed_at timestamp with time zone,
    constraint visit_note_history_pk primary key (id, revision),
    constraint visit_note_history_revision_fk foreign key (revision) references revision (id)
);

create sequence addendum_seq increment by 50;
create table addendum (
    id bigint not null,
    visit_note_id bigint not null,
    words text not null,
    written_by varchar(200) not null,
    written_at timestamp with time zone not null,
    constraint addendum_pk primary key (id),
    constraint addendum_visit_note_fk foreign key (visit_note_id) references visit_note (id)
);
create index addendum_note on addendum (visit_note_id);

create sequence work_status_seq increment by 50;
create table work_status (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    code varchar(20) not null,
    from_on date not null,
    until_on date,
    decided_by varchar(30) not null,
    hours_a_week numeric(4,1),
    limits varchar(200),
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint work_status_pk primary key (id),
    constraint work_status_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint work_status_once_a_day unique (case_file_id, from_on),
    constraint work_status_ends_after_it_begins check (until_on is null or until_on >= from_on)
);

create table work_status_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    code varchar(20),
    from_on date,
    until_on date,
    decided_by varchar(30),
    hours_a_week numeric(4,1),
    limits varchar(200),
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint work_status_history_pk primary key (id, revision),
    constraint work_status_history_revision_fk foreign key (revision) references revision (id)
);
