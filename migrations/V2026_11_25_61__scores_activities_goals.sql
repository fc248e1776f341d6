create sequence score_seq increment by 50;
create table score (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    scored_on date not null,
    instrument varchar(40) not null,
    instrument_version varchar(40) not null,
    answers varchar(200) not null,
    score_value double precision,
    low_value double precision,
    high_value double precision,
    unit varchar(20) not null,
    estimated boolean not null,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint score_pk primary key (id),
    constraint score_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint score_once_a_day unique (case_file_id, instrument, scored_on)
);

create table score_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    scored_on date,
    instrument varchar(40),
    instrument_version varchar(40),
    answers varchar(200),
    score_value double precision,
    low_value double precision,
    high_value double precision,
    unit varchar(20),
    estimated boolean,
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint score_history_pk primary key (id, revision),
    constraint score_history_revision_fk foreign key (revision) references revision (id)
);

create sequence own_activity_seq increment by 50;
create table own_activity (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    words varchar(120) not null,
    named_on date not null,
    constraint own_activity_pk primary key (id),
    constraint own_activity_case_file_fk foreign key (case_file_id) references case_file (id)
);
create index own_activity_case on own_activity (case_file_id);

create table own_activity_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    words varchar(120),
    named_on date,
    constraint own_activity_history_pk primary key (id, revision),
    constraint own_activity_history_revision_fk foreign key (revision) references revision (id)
);

create sequence activity_rating_seq increment by 50;
create table activity_rating (
    id bigint not null,
    version integer not null,
    activity_id bigint not null,
    rated_on date not null,
    rating integer,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint activity_rating_pk primary key (id),
    constraint activity_rating_activity_fk foreign key (activity_id) references own_activity (id),
    constraint activity_rating_once_a_day unique (activity_id, rated_on),
    constraint activity_rating_range check (rating is null or (rating >= 0 and rating <= 10))
);

create table activity_rating_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    activity_id bigint,
    rated_on date,
    rating integer,
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint activity_rating_history_pk primary key (id, revision),
    constraint activity_rating_history_revision_fk foreign key (revision) references revision (id)
);

create sequence goal_seq increment by 50;
create table goal (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    words varchar(200) not null,
    set_on date not null,
    state varchar(20) not null,
    where_now varchar(200),
    reviewed_on date,
    constraint goal_pk primary key (id),
    constraint goal_case_file_fk foreign key (case_file_id) references case_file (id)
);
create index goal_case on goal (case_file_id);

create table goal_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    words varchar(200),
    set_on date,
    state varchar(20),
    where_now varchar(200),
    reviewed_on date,
    constraint goal_history_pk primary key (id, revision),
    constraint goal_history_revision_fk foreign key (revision) references revision (id)
);
