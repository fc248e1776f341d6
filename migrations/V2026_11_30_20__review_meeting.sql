-- A review meeting: when, who leads it and who writes. Every change in a meeting is a new version of this row, so that the minutes,
-- which name the version they were closed at, hold it still.
create sequence review_meeting_seq increment by 50;
create table review_meeting (
    id bigint not null,
    version integer not null,
    held_on date not null,
    starts_at varchar(5) not null,
    chair_id bigint not null,
    notes_id bigint not null,
    planned_by varchar(120) not null,
    planned_at timestamp with time zone not null,
    called_off_by varchar(120),
    called_off_at timestamp with time zone,
    called_off_why varchar(500),
    constraint review_meeting_pk primary key (id),
    constraint review_meeting_version_once unique (id, version),
    constraint review_meeting_chair_fk foreign key (chair_id) references account (id),
    constraint review_meeting_notes_fk foreign key (notes_id) references account (id),
    constraint review_meeting_called_off_with_reason check ((called_off_at is null) = (called_off_why is null))
);
create index review_meeting_day on review_meeting (held_on);

create table review_meeting_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    held_on date,
    starts_at varchar(5),
    chair_id bigint,
    notes_id bigint,
    planned_by varchar(120),
    planned_at timestamp with time zone,
    called_off_by varchar(120),
    called_off_at timestamp with time zone,
    called_off_why varchar(500),
    constraint review_meeting_history_pk primary key (id, revision),
    constraint review_meeting_history_revision_fk foreign key (revision) references revision (id)
);

-- Who takes part: somebody with an account here, or a guest by name and role. A guest may stand for an employer or a correspondent on
-- record, whose consents then count; one who stands for nobody on record has none.
create sequence meeting_person_seq increment by 50;
create table meeting_person (
    id bigint not null,
    meeting_id bigint not null,
    account_id bigint,
    name varchar(120),
    role_words varchar(120),
    employer_id bigint,
    correspondent_id bigint,
    constraint meeting_person_pk primary key (id),
    constraint meeting_person_meeting_fk foreign key (meeting_id) references review_meeting (id),
    constraint meeting_person_account_fk foreign key (account_id) references account (id),
    constraint meeting_person_employer_fk foreign key (employer_id) references employer (id),
    constraint meeting_person_correspondent_fk foreign key (correspondent_id) references correspondent (id),
    constraint meeting_person_is_one check ((account_id is null) <> (name is null)),
    constraint meeting_person_stands_for_one check (employer_id is null or correspondent_id is null),
    constraint meeting_person_once unique (meeting_id, account_id)
);

create table meeting_person_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    meeting_id bigint,
    account_id bigint,
    name varchar(120),
    role_words varchar(120),
    employer_id bigint,
    correspondent_id bigint,
    constraint meeting_person_history_pk primary key (id, revision),
    constraint meeting_person_history_revision_fk foreign key (revision) references revision (id)
);

-- A case on the agenda, once somebody touched it there; until then the agenda fills itself. One that was taken off stays, with the reason.
create sequence meeting_case_seq increment by 50;
create table meeting_case (
    id bigint not null,
    version integer not null,
    meeting_id bigint not null,
    case_file_id bigint not null,
    place integer not null,
    minutes integer not null,
    question varchar(1000),
    notes text,
    guests_left boolean not null,
    added_by varchar(120),
    removed_by varchar(120),
    removed_why varchar(500),
    constraint meeting_case_pk primary key (id),
    constraint meeting_case_meeting_fk foreign key (meeting_id) references review_meeting (id),
    constraint meeting_case_case_fk foreign key (case_file_id) references case_file (id),
    constraint meeting_case_once unique (meeting_id, case_file_id),
    constraint meeting_case_minutes check (minutes between 1 and 60),
    constraint meeting_case_removed_with_reason check ((removed_by is null) = (removed_why is null))
);
create index meeting_case_case on meeting_case (case_file_id);

create table meeting_case_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    meeting_id bigint,
    case_file_id bigint,
    place integer,
    minutes integer,
    question varchar(1000),
    notes text,
    guests_left boolean,
    added_by varchar(120),
    removed_by varchar(120),
    removed_why varchar(500),
    constraint meeting_case_history_pk primary key (id, revision),
    constraint meeting_case_history_revision_fk foreign key (revision) references revision (id)
);
