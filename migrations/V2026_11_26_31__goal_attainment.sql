alter table goal add column expected varchar(200);
alter table goal add column importance integer;
alter table goal add column difficulty integer;
alter table goal add column baseline integer;
alter table goal add column given_up_on date;
alter table goal add column why_given_up varchar(300);
alter table goal add constraint goal_importance check (importance is null or (importance >= 1 and importance <= 3));
alter table goal add constraint goal_difficulty check (difficulty is null or (difficulty >= 1 and difficulty <= 3));
alter table goal add constraint goal_baseline check (baseline is null or baseline in (-2, -1));
alter table goal_history add column expected varchar(200);
alter table goal_history add column importance integer;
alter table goal_history add column difficulty integer;
alter table goal_history add column baseline integer;
alter table goal_history add column given_up_on date;
alter table goal_history add column why_given_up varchar(300);

create sequence goal_rating_seq increment by 50;
create table goal_rating (
    id bigint not null,
    version integer not null,
    goal_id bigint not null,
    rated_on date not null,
    attained integer,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint goal_rating_pk primary key (id),
    constraint goal_rating_goal_fk foreign key (goal_id) references goal (id),
    constraint goal_rating_once_a_day unique (goal_id, rated_on),
    constraint goal_rating_range check (attained is null or (attained >= -2 and attained <= 2))
);

create table goal_rating_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    goal_id bigint,
    rated_on date,
    attained integer,
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint goal_rating_history_pk primary key (id, revision),
    constraint goal_rating_history_revision_fk foreign key (revision) references revision (id)
);
