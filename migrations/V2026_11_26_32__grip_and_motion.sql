create sequence grip_test_seq increment by 50;
create table grip_test (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    tested_on date not null,
    hand varchar(10) not null,
    first_kg numeric(4,1),
    second_kg numeric(4,1),
    third_kg numeric(4,1),
    not_done varchar(120),
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint grip_test_pk primary key (id),
    constraint grip_test_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint grip_test_once_a_day unique (case_file_id, tested_on, hand)
);

create table grip_test_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    tested_on date,
    hand varchar(10),
    first_kg numeric(4,1),
    second_kg numeric(4,1),
    third_kg numeric(4,1),
    not_done varchar(120),
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint grip_test_history_pk primary key (id, revision),
    constraint grip_test_history_revision_fk foreign key (revision) references revision (id)
);

create sequence motion_test_seq increment by 50;
create table motion_test (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    tested_on date not null,
    motion varchar(60) not null,
    side varchar(10) not null,
    degrees numeric(4,1),
    device varchar(30) not null,
    pain_limited boolean not null,
    not_measured varchar(120),
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint motion_test_pk primary key (id),
    constraint motion_test_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint motion_test_once_a_day unique (case_file_id, tested_on, motion, side)
);

create table motion_test_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    tested_on date,
    motion varchar(60),
    side varchar(10),
    degrees numeric(4,1),
    device varchar(30),
    pain_limited boolean,
    not_measured varchar(120),
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint motion_test_history_pk primary key (id, revision),
    constraint motion_test_history_revision_fk foreign key (revision) references revision (id)
);
