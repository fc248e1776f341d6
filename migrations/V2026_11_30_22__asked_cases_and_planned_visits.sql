-- A clinician asks for a case to be discussed. It stands until a meeting discussed it or it is taken back with a reason.
create sequence case_ask_seq increment by 50;
create table case_ask (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    kind varchar(30) not null,
    words varchar(500) not null,
    asked_by varchar(120) not null,
    asked_at timestamp with time zone not null,
    settled_by varchar(120),
    settled_at timestamp with time zone,
    settled_how varchar(500),
    constraint case_ask_pk primary key (id),
    constraint case_ask_case_fk foreign key (case_file_id) references case_file (id),
    constraint case_ask_settled_with_reason check ((settled_at is null) = (settled_how is null))
);
create index case_ask_case on case_ask (case_file_id);

create table case_ask_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    kind varchar(30),
    words varchar(500),
    asked_by varchar(120),
    asked_at timestamp with time zone,
    settled_by varchar(120),
    settled_at timestamp with time zone,
    settled_how varchar(500),
    constraint case_ask_history_pk primary key (id, revision),
    constraint case_ask_history_revision_fk foreign key (revision) references revision (id)
);

-- How many visits were agreed for a case: a reason to look, not a limit.
create table planned_visits (
    case_file_id bigint not null,
    version integer not null,
    visits integer,
    set_by varchar(120) not null,
    set_at timestamp with time zone not null,
    constraint planned_visits_pk primary key (case_file_id),
    constraint planned_visits_case_fk foreign key (case_file_id) references case_file (id),
    constraint planned_visits_number check (visits is null or visits between 1 and 99)
);

create table planned_visits_history (
    case_file_id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    visits integer,
    set_by varchar(120),
    set_at timestamp with time zone,
    constraint planned_visits_history_pk primary key (case_file_id, revision),
    constraint planned_visits_history_revision_fk foreign key (revision) references revision (id)
);
