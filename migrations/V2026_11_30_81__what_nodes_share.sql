-- The key of the link that makes the first account: printed by one node, taken by any. Only its SHA-256 is kept.
create table first_run_key (
    key_hash varchar(64) not null,
    made_at timestamp(6) with time zone not null,
    constraint first_run_key_pk primary key (key_hash)
);

-- The requests of a token in the running minute, counted by all nodes together.
alter table report_token add column counted_from timestamp(6) with time zone;
alter table report_token add column counted integer;
