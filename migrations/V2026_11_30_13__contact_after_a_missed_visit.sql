-- Trying to reach somebody who did not come; it belongs to the visit, or to the appointment of somebody without a case.
create sequence contact_attempt_seq increment by 50;
create table contact_attempt (
    id bigint not null,
    visit_id bigint,
    appointment_id bigint,
    tried_at timestamp with time zone not null,
    route varchar(20) not null,
    outcome varchar(20) not null,
    reason varchar(20),
    made_by varchar(60) not null,
    constraint contact_attempt_pk primary key (id),
    constraint contact_attempt_visit_fk foreign key (visit_id) references visit (id),
    constraint contact_attempt_appointment_fk foreign key (appointment_id) references appointment (id),
    constraint contact_attempt_after_one_miss check ((visit_id is null) <> (appointment_id is null))
);
create index contact_attempt_visit on contact_attempt (visit_id);
create index contact_attempt_appointment on contact_attempt (appointment_id);
