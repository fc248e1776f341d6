create sequence obstacle_answer_seq increment by 50;
create table obstacle_answer (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    obstacle varchar(60) not null,
    answer varchar(20) not null,
    words varchar(300),
    answered_on date not null,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint obstacle_answer_pk primary key (id),
    constraint obstacle_answer_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint obstacle_answer_once unique (case_file_id, obstacle)
);

create table obstacle_answer_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    obstacle varchar(60),
    answer varchar(20),
    words varchar(300),
    answered_on date,
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint obstacle_answer_history_pk primary key (id, revision),
    constraint obstacle_answer_history_revision_fk foreign key (revision) references revision (id)
);
