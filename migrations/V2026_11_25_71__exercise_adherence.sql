create sequence exercise_adherence_seq increment by 50;
create table exercise_adherence (
    id bigint not null,
    version integer not null,
    prescription_id bigint not null,
    week_to date not null,
    done integer,
    planned integer not null,
    pain_during integer,
    next_morning varchar(20) not null,
    reported_by varchar(120) not null,
    constraint exercise_adherence_pk primary key (id),
    constraint exercise_adherence_prescription_fk foreign key (prescription_id) references exercise_prescription (id),
    constraint exercise_adherence_once_a_day unique (prescription_id, week_to),
    constraint exercise_adherence_counts check (planned >= 0 and (done is null or done >= 0)),
    constraint exercise_adherence_pain check (pain_during is null or pain_during between 0 and 10)
);

create table exercise_adherence_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    prescription_id bigint,
    week_to date,
    done integer,
    planned integer,
    pain_during integer,
    next_morning varchar(20),
    reported_by varchar(120),
    constraint exercise_adherence_history_pk primary key (id, revision),
    constraint exercise_adherence_history_revision_fk foreign key (revision) references revision (id)
);
