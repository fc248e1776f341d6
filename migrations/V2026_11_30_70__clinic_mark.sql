-- A random mark of this clinic; identifiers that leave it are formed with it.
create table clinic_mark (
    id integer not null,
    mark varchar(36) not null,
    constraint clinic_mark_pk primary key (id),
    constraint clinic_mark_only_one check (id = 1)
);
