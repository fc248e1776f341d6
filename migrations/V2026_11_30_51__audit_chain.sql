alter table audit_event add column address varchar(60);

-- One link a sealed entry. Entries themselves are never touched again; those of before are sealed at the next start.
create table audit_seal (
    sequence bigint not null,
    event_id bigint not null,
    previous_hash varchar(64) not null,
    hash varchar(64) not null,
    constraint audit_seal_pk primary key (sequence),
    constraint audit_seal_event_once unique (event_id),
    constraint audit_seal_sequence_counts check (sequence > 0)
);

-- How many entries are sealed and the hash of the last: what is cut off at the end is missed here.
create table audit_head (
    id integer not null,
    trail varchar(40) not null,
    sealed bigint not null,
    hash varchar(64) not null,
    constraint audit_head_pk primary key (id),
    constraint audit_head_once check (id = 1)
);
