create sequence case_link_seq increment by 50;
create table case_link (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    from_kind varchar(20) not null,
    from_ref varchar(80) not null,
    from_title varchar(200) not null,
    to_kind varchar(20) not null,
    to_ref varchar(80) not null,
    to_title varchar(200) not null,
    decision varchar(20) not null,
    reason varchar(500) not null,
    decided_by bigint not null,
    decided_at timestamp(6) with time zone not null,
    constraint case_link_pk primary key (id),
    constraint case_link_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint case_link_decided_by_fk foreign key (decided_by) references account (id),
    constraint case_link_one_a_pair unique (case_file_id, from_kind, from_ref, to_kind, to_ref),
    constraint case_link_joins_neighbours check ((from_kind = 'SYMPTOM' and to_kind = 'FINDING') or (from_kind = 'FINDING' and to_kind = 'ACTION'))
);

create table case_link_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    from_kind varchar(20),
    from_ref varchar(80),
    from_title varchar(200),
    to_kind varchar(20),
    to_ref varchar(80),
    to_title varchar(200),
    decision varchar(20),
    reason varchar(500),
    decided_by bigint,
    decided_at timestamp(6) with time zone,
    constraint case_link_history_pk primary key (id, revision),
    constraint case_link_history_revision_fk foreign key (revision) references revision (id)
);
