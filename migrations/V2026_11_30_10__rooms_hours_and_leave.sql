create sequence clinic_room_seq increment by 50;
create table clinic_room (
    id bigint not null,
    version integer not null,
    name varchar(60) not null,
    in_use boolean not null,
    constraint clinic_room_pk primary key (id),
    constraint clinic_room_name_once unique (name)
);

-- The usual week of a clinician; one without a row keeps the usual hours of the content.
create sequence working_week_seq increment by 50;
create table working_week (
    id bigint not null,
    version integer not null,
    account_id bigint not null,
    spans varchar(1000) not null,
    constraint working_week_pk primary key (id),
    constraint working_week_account_fk foreign key (account_id) references account (id),
    constraint working_week_one_each unique (account_id)
);

-- Away: one clinician, or without one the whole clinic (public holiday, closure). Without minutes it is the whole day.
create sequence clinic_leave_seq increment by 50;
create table clinic_leave (
    id bigint not null,
    version integer not null,
    account_id bigint,
    first_on date not null,
    last_on date not null,
    from_minute integer,
    to_minute integer,
    words varchar(120) not null,
    constraint clinic_leave_pk primary key (id),
    constraint clinic_leave_account_fk foreign key (account_id) references account (id),
    constraint clinic_leave_ends_after_it_begins check (last_on >= first_on),
    constraint clinic_leave_minutes_both_or_none check ((from_minute is null) = (to_minute is null)),
    constraint clinic_leave_minutes_in_order check (from_minute is null or (from_minute >= 0 and from_minute < to_minute and to_minute <= 1440))
);
create index clinic_leave_days on clinic_leave (last_on, first_on);
