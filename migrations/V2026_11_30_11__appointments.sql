-- A time booked for a patient. What the contact was, its day in the record and whether it took place stand with the visit; only the
-- appointment of somebody who has no case yet keeps its own attendance, until the case is opened.
create sequence appointment_seq increment by 50;
create table appointment (
    id bigint not null,
    version integer not null,
    patient_id bigint not null,
    visit_id bigint,
    first_attendance varchar(20),
    clinician_id bigint not null,
    room_id bigint,
    booked_on date not null,
    start_minute integer not null,
    minutes integer not null,
    live boolean not null,
    arrived_at timestamp with time zone,
    cancelled_by varchar(20),
    cancelled_at timestamp with time zone,
    exported_at timestamp with time zone,
    exported_by varchar(60),
    constraint appointment_pk primary key (id),
    constraint appointment_patient_fk foreign key (patient_id) references patient (id),
    constraint appointment_visit_fk foreign key (visit_id) references visit (id),
    constraint appointment_clinician_fk foreign key (clinician_id) references account (id),
    constraint appointment_room_fk foreign key (room_id) references clinic_room (id),
    constraint appointment_one_a_visit unique (visit_id),
    constraint appointment_attendance_stands_once check ((visit_id is null) = (first_attendance is not null)),
    constraint appointment_within_a_day check (start_minute >= 0 and minutes > 0 and start_minute + minutes <= 1440),
    constraint appointment_cancelled_wholly check ((cancelled_at is null) = (cancelled_by is null))
);
create index appointment_day on appointment (booked_on);
create index appointment_patient on appointment (patient_id);

-- One row for every five minutes that an appointment takes of a clinician, a room or a patient. The key is what keeps two bookings made
-- at one moment from both getting the time, on every database.
create table taken_slot (
    what varchar(10) not null,
    whose_id bigint not null,
    taken_on date not null,
    cell integer not null,
    appointment_id bigint not null,
    constraint taken_slot_once primary key (what, whose_id, taken_on, cell),
    constraint taken_slot_appointment_fk foreign key (appointment_id) references appointment (id),
    constraint taken_slot_known check (case what when 'clinician' then 1 when 'room' then 1 when 'patient' then 1 else 0 end = 1),
    constraint taken_slot_within_a_day check (cell >= 0 and cell < 288)
);
create index taken_slot_appointment on taken_slot (appointment_id);

-- What was done with an appointment, by whom, and how it stood before: shown as its history, and read by Undo.
create sequence appointment_change_seq increment by 50;
create table appointment_change (
    id bigint not null,
    appointment_id bigint not null,
    act varchar(20) not null,
    made_at timestamp with time zone not null,
    made_by varchar(60) not null,
    undone boolean not null,
    made_visit boolean not null,
    was_clinician_id bigint not null,
    was_room_id bigint,
    was_on date not null,
    was_start_minute integer not null,
    was_minutes integer not null,
    was_live boolean not null,
    was_attendance varchar(20) not null,
    was_arrived_at timestamp with time zone,
    was_cancelled_by varchar(20),
    was_cancelled_at timestamp with time zone,
    constraint appointment_change_pk primary key (id),
    constraint appointment_change_appointment_fk foreign key (appointment_id) references appointment (id),
    constraint appointment_change_clinician_fk foreign key (was_clinician_id) references account (id),
    constraint appointment_change_room_fk foreign key (was_room_id) references clinic_room (id)
);
create index appointment_change_appointment on appointment_change (appointment_id, id);
