create sequence workplace_assessment_seq increment by 50;
create table workplace_assessment (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    assessed_on date not null,
    place varchar(200),
    lenses varchar(20) not null,
    laptop_alone boolean not null,
    hours_at_screen numeric(4, 1),
    longest_spell_minutes integer,
    breaks varchar(300),
    notes text,
    constraint workplace_assessment_pk primary key (id),
    constraint workplace_assessment_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint workplace_assessment_hours_in_a_day check (hours_at_screen is null or hours_at_screen between 0 and 24),
    constraint workplace_assessment_spell_in_a_day check (longest_spell_minutes is null or longest_spell_minutes between 0 and 1440)
);
create index workplace_assessment_case_file on workplace_assessment (case_file_id, assessed_on);

create table workplace_assessment_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    assessed_on date,
    place varchar(200),
    lenses varchar(20),
    laptop_alone boolean,
    hours_at_screen numeric(4, 1),
    longest_spell_minutes integer,
    breaks varchar(300),
    notes text,
    constraint workplace_assessment_history_pk primary key (id, revision),
    constraint workplace_assessment_history_revision_fk foreign key (revision) references revision (id)
);

create sequence workplace_measurement_seq increment by 50;
create table workplace_measurement (
    id bigint not null,
    assessment_id bigint not null,
    measure varchar(40) not null,
    amount numeric(10, 3) not null,
    unit varchar(12) not null,
    how varchar(20) not null,
    standard_error numeric(10, 4) not null,
    twice boolean not null,
    constraint workplace_measurement_pk primary key (id),
    constraint workplace_measurement_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint workplace_measurement_once unique (assessment_id, measure),
    constraint workplace_measurement_error_not_negative check (standard_error >= 0)
);

create table workplace_measurement_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    assessment_id bigint,
    measure varchar(40),
    amount numeric(10, 3),
    unit varchar(12),
    how varchar(20),
    standard_error numeric(10, 4),
    twice boolean,
    constraint workplace_measurement_history_pk primary key (id, revision),
    constraint workplace_measurement_history_revision_fk foreign key (revision) references revision (id)
);

create sequence workplace_observation_seq increment by 50;
create table workplace_observation (
    id bigint not null,
    assessment_id bigint not null,
    criterion_id varchar(20) not null,
    grade varchar(20) not null,
    constraint workplace_observation_pk primary key (id),
    constraint workplace_observation_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint workplace_observation_once unique (assessment_id, criterion_id)
);

create table workplace_observation_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    assessment_id bigint,
    criterion_id varchar(20),
    grade varchar(20),
    constraint workplace_observation_history_pk primary key (id, revision),
    constraint workplace_observation_history_revision_fk foreign key (revision) references revision (id)
);

create sequence workplace_adjustment_seq increment by 50;
create table workplace_adjustment (
    id bigint not null,
    assessment_id bigint not null,
    number integer not null,
    part varchar(20) not null,
    found_mm numeric(10, 3),
    proposed_mm numeric(10, 3) not null,
    constraint workplace_adjustment_pk primary key (id),
    constraint workplace_adjustment_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint workplace_adjustment_once unique (assessment_id, part)
);

create table workplace_adjustment_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    assessment_id bigint,
    number integer,
    part varchar(20),
    found_mm numeric(10, 3),
    proposed_mm numeric(10, 3),
    constraint workplace_adjustment_history_pk primary key (id, revision),
    constraint workplace_adjustment_history_revision_fk foreign key (revision) references revision (id)
);
