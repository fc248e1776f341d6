create sequence waiting_entry_seq increment by 50;
create table waiting_entry (
    id bigint not null,
    version integer not null,
    patient_id bigint not null,
    case_file_id bigint,
    kind varchar(20) not null,
    clinician_id bigint,
    earliest_on date not null,
    latest_on date,
    times varchar(80) not null,
    priority varchar(20) not null,
    since_on date not null,
    added_by varchar(60) not null,
    appointment_id bigint,
    ended_at timestamp with time zone,
    constraint waiting_entry_pk primary key (id),
    constraint waiting_entry_patient_fk foreign key (patient_id) references patient (id),
    constraint waiting_entry_case_file_fk foreign key (case_file_id) references case_file (id),
    constraint waiting_entry_clinician_fk foreign key (clinician_id) references account (id),
    constraint waiting_entry_appointment_fk foreign key (appointment_id) references appointment (id),
    constraint waiting_entry_booked_has_ended check (appointment_id is null or ended_at is not null),
    constraint waiting_entry_days_in_order check (latest_on is null or latest_on >= earliest_on)
);
create index waiting_entry_open on waiting_entry (ended_at);
