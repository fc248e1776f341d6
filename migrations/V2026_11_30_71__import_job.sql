-- A file that was uploaded to be taken in: checked first, stored in one transaction, its text forgotten afterwards.
create sequence import_job_seq increment by 50;
create table import_job (
    id bigint not null,
    version integer not null,
    kind varchar(30) not null,
    file_name varchar(120) not null,
    state varchar(20) not null,
    content text,
    rows_total integer not null,
    rows_done integer not null,
    problem_count integer not null,
    problems text,
    double_count integer not null,
    doubles text,
    with_doubles boolean not null,
    stored_count integer not null,
    failure varchar(400),
    made_by varchar(120) not null,
    made_at timestamp with time zone not null,
    touched_at timestamp with time zone not null,
    constraint import_job_pk primary key (id),
    constraint import_job_counts check (rows_total >= 0 and rows_done >= 0 and problem_count >= 0 and double_count >= 0 and stored_count >= 0)
);
create index import_job_made_at on import_job (made_at);
