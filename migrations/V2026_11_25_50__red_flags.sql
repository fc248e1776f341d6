create sequence red_flag_screen_seq increment by 50;
create table red_flag_screen (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    visit_id bigint,
    occasion varchar(20) not null,
    screened_on date not null,
    regions varchar(300) not null,
    left_open text not null,
    begun_by_id bigint not null,
    begun_at timestamp(6) with time zone not null,
    saved_at timestamp(6) with time zone not null,
    verdict varchar(20) not null,
    open_answers text not null,
    suspended_until_asked text not null,
    signed_by_id bigint,
    signed_at timestamp(6) with time zone,
    constraint red_flag_screen_pk primary key (id),
    constraint red_flag_screen_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint red_flag_screen_visit_fk foreign key (visit_id) references visit (id),
    constraint red_flag_screen_begun_by_fk foreign key (begun_by_id) references account (id),
    constraint red_flag_screen_signed_by_fk foreign key (signed_by_id) references account (id),
    constraint red_flag_screen_signed_by_somebody check ((signed_by_id is null) = (signed_at is null)),
    constraint red_flag_screen_clear_has_nothing_open check (verdict <> 'CLEAR' or open_answers = '')
);
create index red_flag_screen_case on red_flag_screen (case_file_id, id);

create table red_flag_screen_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    visit_id bigint,
    occasion varchar(20),
    screened_on date,
    regions varchar(300),
    left_open text,
    begun_by_id bigint,
    begun_at timestamp(6) with time zone,
    saved_at timestamp(6) with time zone,
    verdict varchar(20),
    open_answers text,
    suspended_until_asked text,
    signed_by_id bigint,
    signed_at timestamp(6) with time zone,
    constraint red_flag_screen_history_pk primary key (id, revision),
    constraint red_flag_screen_history_revision_fk foreign key (revision) references revision (id)
);

create sequence red_flag_answer_seq increment by 50;
create table red_flag_answer (
    id bigint not null,
    version integer not null,
    screen_id bigint not null,
    question_key varchar(80) not null,
    answer varchar(20) not null,
    note varchar(1000),
    declined boolean not null,
    constraint red_flag_answer_pk primary key (id),
    constraint red_flag_answer_screen_fk foreign key (screen_id) references red_flag_screen (id),
    constraint red_flag_answer_once unique (screen_id, question_key),
    constraint red_flag_answer_declined_is_unknown check (not declined or answer = 'UNKNOWN')
);

create table red_flag_answer_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    screen_id bigint,
    question_key varchar(80),
    answer varchar(20),
    note varchar(1000),
    declined boolean,
    constraint red_flag_answer_history_pk primary key (id, revision),
    constraint red_flag_answer_history_revision_fk foreign key (revision) references revision (id)
);

create sequence red_flag_seq increment by 50;
create table red_flag (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    screen_id bigint not null,
    origin varchar(80) not null,
    name varchar(300) not null,
    points_to varchar(300) not null,
    action text not null,
    suspends text not null,
    certain boolean not null,
    found_urgency varchar(20) not null,
    urgency varchar(20) not null,
    raised_at timestamp(6) with time zone not null,
    urgency_since timestamp(6) with time zone not null,
    urgency_reason varchar(1000),
    urgency_by_id bigint,
    closed_at timestamp(6) with time zone,
    closed_by_id bigint,
    close_reason varchar(1000),
    seen_by varchar(300),
    seen_on date,
    result varchar(2000),
    constraint red_flag_pk primary key (id),
    constraint red_flag_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint red_flag_screen_fk foreign key (screen_id) references red_flag_screen (id),
    constraint red_flag_urgency_by_fk foreign key (urgency_by_id) references account (id),
    constraint red_flag_closed_by_fk foreign key (closed_by_id) references account (id),
    constraint red_flag_closed_with_name_and_reason check (closed_at is null
        or (closed_by_id is not null and close_reason is not null and seen_by is not null and seen_on is not null))
);
create index red_flag_case on red_flag (case_file_id, closed_at);

create table red_flag_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    screen_id bigint,
    origin varchar(80),
    name varchar(300),
    points_to varchar(300),
    action text,
    suspends text,
    certain boolean,
    found_urgency varchar(20),
    urgency varchar(20),
    raised_at timestamp(6) with time zone,
    urgency_since timestamp(6) with time zone,
    urgency_reason varchar(1000),
    urgency_by_id bigint,
    closed_at timestamp(6) with time zone,
    closed_by_id bigint,
    close_reason varchar(1000),
    seen_by varchar(300),
    seen_on date,
    result varchar(2000),
    constraint red_flag_history_pk primary key (id, revision),
    constraint red_flag_history_revision_fk foreign key (revision) references revision (id)
);

create sequence red_flag_call_seq increment by 50;
create table red_flag_call (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    called varchar(300) not null,
    called_role varchar(300),
    called_at timestamp(6) not null,
    said varchar(2000) not null,
    recorded_by_id bigint not null,
    recorded_at timestamp(6) with time zone not null,
    constraint red_flag_call_pk primary key (id),
    constraint red_flag_call_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint red_flag_call_recorded_by_fk foreign key (recorded_by_id) references account (id)
);
create index red_flag_call_case on red_flag_call (case_file_id, recorded_at);

create table red_flag_call_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    called varchar(300),
    called_role varchar(300),
    called_at timestamp(6),
    said varchar(2000),
    recorded_by_id bigint,
    recorded_at timestamp(6) with time zone,
    constraint red_flag_call_history_pk primary key (id, revision),
    constraint red_flag_call_history_revision_fk foreign key (revision) references revision (id)
);
