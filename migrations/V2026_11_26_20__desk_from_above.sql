-- where things stand on a desk, seen from above; one look for each assessment
create sequence desk_plan_seq start with 1 increment by 50;

create table desk_plan (
    id bigint not null,
    version integer not null,
    assessment_id bigint not null,
    second_screen varchar(10) not null,
    window_side varchar(10),
    constraint desk_plan_pk primary key (id),
    constraint desk_plan_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint desk_plan_once unique (assessment_id)
);

create table desk_plan_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    assessment_id bigint,
    second_screen varchar(10),
    window_side varchar(10),
    constraint desk_plan_history_pk primary key (id, revision),
    constraint desk_plan_history_revision_fk foreign key (revision) references revision (id)
);

create table desk_plan_reading (
    desk_plan_id bigint not null,
    item varchar(20) not null,
    amount numeric(7, 1) not null,
    constraint desk_plan_reading_pk primary key (desk_plan_id, item),
    constraint desk_plan_reading_plan_fk foreign key (desk_plan_id) references desk_plan (id)
);

create table desk_plan_reading_history (
    revision bigint not null,
    revision_kind smallint,
    desk_plan_id bigint not null,
    item varchar(20) not null,
    amount numeric(7, 1) not null,
    constraint desk_plan_reading_history_pk primary key (revision, desk_plan_id, item, amount),
    constraint desk_plan_reading_history_revision_fk foreign key (revision) references revision (id)
);
