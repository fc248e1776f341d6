-- A hold keeps a case from being removed: an open claim, a complaint, work exposure. It goes with the case.
create sequence legal_hold_seq increment by 50;
create table legal_hold (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    reason varchar(300) not null,
    placed_by varchar(60) not null,
    placed_at timestamp with time zone not null,
    lifted_by varchar(60),
    lifted_at timestamp with time zone,
    constraint legal_hold_pk primary key (id),
    constraint legal_hold_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint legal_hold_lifted_wholly check ((lifted_by is null) = (lifted_at is null))
);
create index legal_hold_case_file on legal_hold (case_file_id);

-- That somebody was removed, by whom and on what ground; nothing here says who it was.
create sequence person_removal_seq increment by 50;
create table person_removal (
    id bigint not null,
    patient_number bigint not null,
    removed_at timestamp with time zone not null,
    removed_by varchar(60) not null,
    ground varchar(30) not null,
    rows_removed bigint not null,
    constraint person_removal_pk primary key (id),
    constraint person_removal_ground_known check (case ground when 'PERIOD_OVER' then 1 when 'ASKED' then 1 when 'REGISTERED_WRONGLY' then 1 else 0 end = 1)
);

-- What statistics keep of removed cases: counts by year and ending, no row of a person.
create table removed_case_tally (
    year_opened integer not null,
    ending varchar(20) not null,
    cases bigint not null,
    visits bigint not null,
    constraint removed_case_tally_pk primary key (year_opened, ending)
);
