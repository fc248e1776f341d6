create sequence own_link_seq increment by 50;
create table own_link (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    token_hash varchar(64) not null,
    made_by varchar(120) not null,
    made_at timestamp with time zone not null,
    expires_on date not null,
    revoked_by varchar(120),
    revoked_at timestamp with time zone,
    failed_tries integer not null,
    locked_at timestamp with time zone,
    last_used_at timestamp with time zone,
    constraint own_link_pk primary key (id),
    constraint own_link_token unique (token_hash),
    constraint own_link_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint own_link_tries check (failed_tries >= 0)
);
create index own_link_case on own_link (case_file_id);

create table own_visit (
    token_hash varchar(64) not null,
    link_id bigint not null,
    began_at timestamp with time zone not null,
    constraint own_visit_pk primary key (token_hash),
    constraint own_visit_link_fk foreign key (link_id) references own_link (id)
);

create sequence session_tick_seq increment by 50;
create table session_tick (
    id bigint not null,
    version integer not null,
    prescription_id bigint not null,
    done_on date not null,
    slot integer not null,
    pain_before integer,
    pain_after integer,
    taken_back boolean not null,
    alarm boolean not null,
    received_at timestamp with time zone not null,
    seen_by varchar(120),
    seen_at timestamp with time zone,
    constraint session_tick_pk primary key (id),
    constraint session_tick_once unique (prescription_id, done_on, slot),
    constraint session_tick_prescription_fk foreign key (prescription_id) references exercise_prescription (id),
    constraint session_tick_pain check ((pain_before is null or pain_before between 0 and 10) and (pain_after is null or pain_after between 0 and 10))
);

create sequence own_report_seq increment by 50;
create table own_report (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    reported_on date not null,
    warnings text,
    at_once boolean not null,
    pain_up boolean not null,
    own_words varchar(1000),
    received_at timestamp with time zone not null,
    reviewed_by varchar(120),
    reviewed_at timestamp with time zone,
    review_note varchar(300),
    constraint own_report_pk primary key (id),
    constraint own_report_case_file_fk foreign key (case_file_id) references case_file (id)
);
create index own_report_case on own_report (case_file_id);

create table own_report_line (
    own_report_id bigint not null,
    place integer not null,
    about varchar(60) not null,
    pain_now integer,
    pain_worst integer,
    pain_average integer,
    rating integer,
    constraint own_report_line_pk primary key (own_report_id, place),
    constraint own_report_line_report_fk foreign key (own_report_id) references own_report (id)
);
