-- Each backup the running clinic made or failed to make. A run broken off by a killed process keeps no end.
create sequence backup_run_seq increment by 50;
create table backup_run (
    id bigint not null,
    began_at timestamp with time zone not null,
    ended_at timestamp with time zone,
    scheduled boolean not null,
    asked_by varchar(60),
    file_name varchar(120),
    file_bytes bigint,
    rows_kept bigint,
    failure varchar(600),
    constraint backup_run_pk primary key (id),
    constraint backup_run_failed_or_kept check (failure is null or rows_kept is null)
);
create index backup_run_began on backup_run (began_at);
