-- Who gave a case to whom, when and why; never changed.
create sequence case_handover_seq increment by 50;
create table case_handover (
    id bigint not null,
    case_file_id bigint not null,
    from_id bigint not null,
    to_id bigint not null,
    reason varchar(300) not null,
    handed_by_id bigint not null,
    handed_at timestamp(6) with time zone not null,
    constraint case_handover_pk primary key (id),
    constraint case_handover_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint case_handover_from_fk foreign key (from_id) references account (id),
    constraint case_handover_to_fk foreign key (to_id) references account (id),
    constraint case_handover_by_fk foreign key (handed_by_id) references account (id),
    constraint case_handover_to_another check (from_id <> to_id)
);
create index case_handover_case on case_handover (case_file_id, id);
create index case_file_clinician on case_file (clinician_id, closed_on);
