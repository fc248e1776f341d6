-- What the patient reports on one day: where it hurts, how much, in which pattern. Null in a scale is "not asked", never 0.
create sequence symptom_report_seq increment by 50;
create table symptom_report (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    visit_id bigint,
    reported_on date not null,
    symptom_free boolean not null,
    course varchar(20) not null,
    night_waking varchar(20) not null,
    cough_or_sneeze varchar(20) not null,
    aggravating varchar(400),
    easing varchar(400),
    own_words text,
    saved_by varchar(60) not null,
    saved_at timestamp with time zone not null,
    constraint symptom_report_pk primary key (id),
    constraint symptom_report_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint symptom_report_visit_fk foreign key (visit_id) references visit (id),
    constraint symptom_report_once_a_day unique (case_file_id, reported_on)
);
create index symptom_report_visit on symptom_report (visit_id);

create sequence region_symptom_seq increment by 50;
create table region_symptom (
    id bigint not null,
    symptom_report_id bigint not null,
    zone varchar(40) not null,
    pain_now integer,
    pain_worst integer,
    pain_average integer,
    pain_at_work integer,
    limits_work integer,
    kinds varchar(120) not null,
    since_when varchar(80),
    pattern varchar(400),
    constraint region_symptom_pk primary key (id),
    constraint region_symptom_report_fk foreign key (symptom_report_id) references symptom_report (id),
    constraint region_symptom_zone_once unique (symptom_report_id, zone),
    constraint region_symptom_scales check ((pain_now is null or pain_now between 0 and 10)
        and (pain_worst is null or pain_worst between 0 and 10) and (pain_average is null or pain_average between 0 and 10)
        and (pain_at_work is null or pain_at_work between 0 and 10) and (limits_work is null or limits_work between 0 and 10))
);

create table symptom_report_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    visit_id bigint,
    reported_on date,
    symptom_free boolean,
    course varchar(20),
    night_waking varchar(20),
    cough_or_sneeze varchar(20),
    aggravating varchar(400),
    easing varchar(400),
    own_words text,
    saved_by varchar(60),
    saved_at timestamp with time zone,
    constraint symptom_report_history_pk primary key (id, revision),
    constraint symptom_report_history_revision_fk foreign key (revision) references revision (id)
);

create table region_symptom_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    symptom_report_id bigint,
    zone varchar(40),
    pain_now integer,
    pain_worst integer,
    pain_average integer,
    pain_at_work integer,
    limits_work integer,
    kinds varchar(120),
    since_when varchar(80),
    pattern varchar(400),
    constraint region_symptom_history_pk primary key (id, revision),
    constraint region_symptom_history_revision_fk foreign key (revision) references revision (id)
);
