create sequence day_plan_seq increment by 50;
create table day_plan (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    mark varchar(36) not null,
    work_from integer not null,
    work_to integer not null,
    work_days varchar(30) not null,
    longest_spell integer not null,
    break_minutes integer not null,
    fixed_blocks text,
    morning_at integer,
    evening_at integer,
    discreet boolean not null,
    saved_by varchar(120) not null,
    saved_at timestamp with time zone not null,
    constraint day_plan_pk primary key (id),
    constraint day_plan_one_a_case unique (case_file_id),
    constraint day_plan_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint day_plan_runs_forward check (work_from >= 0 and work_from < work_to and work_to <= 1440),
    constraint day_plan_limits check (longest_spell between 20 and 120 and break_minutes between 5 and 30)
);

create table day_plan_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    mark varchar(36),
    work_from integer,
    work_to integer,
    work_days varchar(30),
    longest_spell integer,
    break_minutes integer,
    fixed_blocks text,
    morning_at integer,
    evening_at integer,
    discreet boolean,
    saved_by varchar(120),
    saved_at timestamp with time zone,
    constraint day_plan_history_pk primary key (id, revision),
    constraint day_plan_history_revision_fk foreign key (revision) references revision (id)
);
