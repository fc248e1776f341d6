-- Work that one node does at a time. Times are the database's own; a turn whose node died ends by itself at held_until.
create table work_turn (
    work varchar(40) not null,
    holder varchar(120),
    held_until timestamp(6) with time zone,
    begun_at timestamp(6) with time zone,
    last_done_at timestamp(6) with time zone,
    constraint work_turn_pk primary key (work)
);
