-- What of the invented demo clinic this database holds. A database without a row here is a real clinic's.
create table demo_part (
    part varchar(40) not null,
    loaded_at timestamp with time zone not null,
    constraint demo_part_pk primary key (part)
);
