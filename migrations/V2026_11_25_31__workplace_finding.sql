create sequence workplace_finding_seq increment by 50;
create table workplace_finding (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    assessment_id bigint not null,
    criterion_id varchar(20) not null,
    deviation numeric(10, 3),
    give_or_take numeric(10, 3),
    verdict varchar(20) not null,
    found_on date not null,
    advised_on date,
    agreed_on date,
    agreed_with varchar(200),
    done_on date,
    checked_on date,
    note varchar(500),
    constraint workplace_finding_pk primary key (id),
    constraint workplace_finding_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint workplace_finding_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint workplace_finding_agreed_with_somebody check (agreed_on is null or agreed_with is not null)
);
create index workplace_finding_case_file on workplace_finding (case_file_id, checked_on);
create index workplace_finding_assessment on workplace_finding (assessment_id);

create table workplace_finding_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    assessment_id bigint,
    criterion_id varchar(20),
    deviation numeric(10, 3),
    give_or_take numeric(10, 3),
    verdict varchar(20),
    found_on date,
    advised_on date,
    agreed_on date,
    agreed_with varchar(200),
    done_on date,
    checked_on date,
    note varchar(500),
    constraint workplace_finding_history_pk primary key (id, revision),
    constraint workplace_finding_history_revision_fk foreign key (revision) references revision (id)
);
