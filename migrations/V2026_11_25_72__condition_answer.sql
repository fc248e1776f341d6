create sequence condition_answer_seq increment by 50;
create table condition_answer (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    condition_key varchar(60) not null,
    answer varchar(20) not null,
    answered_by varchar(120) not null,
    answered_at timestamp with time zone not null,
    constraint condition_answer_pk primary key (id),
    constraint condition_answer_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint condition_answer_once unique (case_file_id, condition_key)
);

create table condition_answer_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    condition_key varchar(60),
    answer varchar(20),
    answered_by varchar(120),
    answered_at timestamp with time zone,
    constraint condition_answer_history_pk primary key (id, revision),
    constraint condition_answer_history_revision_fk foreign key (revision) references revision (id)
);
