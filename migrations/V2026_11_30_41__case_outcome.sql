-- One narrow row a case for the figures of the caseload, summed up anew in the transaction of every change to its case. Nothing here
-- is recorded by anybody: all of it can be summed up again from the other tables. "rule" says by which rule it was; 0 is not yet.
create table case_outcome (
    case_file_id bigint not null,
    rule integer not null,
    patient_id bigint,
    clinician_id bigint,
    employer_id bigint,
    opened_on date,
    closed_on date,
    close_reason varchar(20),
    region varchar(20),
    regions integer,
    referred_on date,
    first_visit_on date,
    last_contact_on date,
    attended integer,
    missed integer,
    pain_first integer,
    pain_last integer,
    measure varchar(40),
    measure_region varchar(20),
    measure_first double precision,
    measure_last double precision,
    off_on date,
    full_on date,
    full_until date,
    days_off integer,
    work_first varchar(20),
    work_last varchar(20),
    screen varchar(20),
    assessed boolean,
    findings varchar(1200),
    linked_first double precision,
    linked_last double precision,
    unlinked_first double precision,
    unlinked_last double precision,
    constraint case_outcome_pk primary key (case_file_id),
    constraint case_outcome_case_fk foreign key (case_file_id) references case_file (id) on delete cascade
);
create index case_outcome_opened on case_outcome (opened_on);
create index case_outcome_employer on case_outcome (employer_id, opened_on);
create index case_outcome_rule on case_outcome (rule);
