create sequence case_file_seq increment by 50;
create table case_file (
    id bigint not null,
    version integer not null,
    patient_id bigint not null,
    clinician_id bigint not null,
    complaint varchar(300) not null,
    onset_on date,
    referred_by varchar(300),
    history text,
    opened_on date not null,
    closed_on date,
    close_reason varchar(20),
    close_note varchar(2000),
    next_review_on date,
    constraint case_file_pk primary key (id),
    constraint case_file_patient_fk foreign key (patient_id) references patient (id),
    constraint case_file_clinician_fk foreign key (clinician_id) references account (id),
    constraint case_file_closes_after_opening check (closed_on is null or closed_on >= opened_on),
    constraint case_file_begins_before_opening check (onset_on is null or onset_on <= opened_on),
    constraint case_file_reviewed_after_opening check (next_review_on is null or next_review_on >= opened_on)
);
create index case_file_patient on case_file (patient_id);
create index case_file_due on case_file (closed_on, next_review_on);

create table case_file_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    patient_id bigint,
    clinician_id bigint,
    complaint varchar(300),
    onset_on date,
    referred_by varchar(300),
    history text,
    opened_on date,
    closed_on date,
    close_reason varchar(20),
    close_note varchar(2000),
    next_review_on date,
    constraint case_file_history_pk primary key (id, revision),
    constraint case_file_history_revision_fk foreign key (revision) references revision (id)
);

create sequence visit_seq increment by 50;
create table visit (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    number integer not null,
    visited_on date not null,
    kind varchar(20) not null,
    attendance varchar(20) not null,
    constraint visit_pk primary key (id),
    constraint visit_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint visit_number_once unique (case_file_id, number),
    constraint visit_numbers_count_from_one check (number >= 1)
);
create index visit_day on visit (visited_on);

create table visit_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    number integer,
    visited_on date,
    kind varchar(20),
    attendance varchar(20),
    constraint visit_history_pk primary key (id, revision),
    constraint visit_history_revision_fk foreign key (revision) references revision (id)
);
