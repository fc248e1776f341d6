-- What the meeting advises on a case.
create sequence meeting_decision_seq increment by 50;
create table meeting_decision (
    id bigint not null,
    version integer not null,
    meeting_id bigint not null,
    case_file_id bigint not null,
    words varchar(1000) not null,
    reason varchar(1000) not null,
    who_id bigint not null,
    due_on date not null,
    review_on date,
    dissent varchar(1000),
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint meeting_decision_pk primary key (id),
    constraint meeting_decision_meeting_fk foreign key (meeting_id) references review_meeting (id),
    constraint meeting_decision_case_fk foreign key (case_file_id) references case_file (id),
    constraint meeting_decision_who_fk foreign key (who_id) references account (id),
    constraint meeting_decision_review_after_due check (review_on is null or review_on >= due_on)
);
create index meeting_decision_case on meeting_decision (case_file_id);
create index meeting_decision_meeting on meeting_decision (meeting_id);

create table meeting_decision_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    meeting_id bigint,
    case_file_id bigint,
    words varchar(1000),
    reason varchar(1000),
    who_id bigint,
    due_on date,
    review_on date,
    dissent varchar(1000),
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint meeting_decision_history_pk primary key (id, revision),
    constraint meeting_decision_history_revision_fk foreign key (revision) references revision (id)
);

-- The meeting advises, the treating clinician decides: one answer a decision, written once.
create table meeting_decision_answer (
    decision_id bigint not null,
    accepted boolean not null,
    why varchar(1000) not null,
    answered_by_id bigint not null,
    answered_at timestamp with time zone not null,
    constraint meeting_decision_answer_pk primary key (decision_id),
    constraint meeting_decision_answer_decision_fk foreign key (decision_id) references meeting_decision (id),
    constraint meeting_decision_answer_account_fk foreign key (answered_by_id) references account (id)
);

-- What somebody does by a day.
create sequence meeting_action_seq increment by 50;
create table meeting_action (
    id bigint not null,
    version integer not null,
    meeting_id bigint not null,
    case_file_id bigint not null,
    words varchar(500) not null,
    who_id bigint not null,
    due_on date not null,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint meeting_action_pk primary key (id),
    constraint meeting_action_meeting_fk foreign key (meeting_id) references review_meeting (id),
    constraint meeting_action_case_fk foreign key (case_file_id) references case_file (id),
    constraint meeting_action_who_fk foreign key (who_id) references account (id)
);
create index meeting_action_case on meeting_action (case_file_id);
create index meeting_action_meeting on meeting_action (meeting_id);

create table meeting_action_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    meeting_id bigint,
    case_file_id bigint,
    words varchar(500),
    who_id bigint,
    due_on date,
    recorded_by varchar(120),
    recorded_at timestamp with time zone,
    constraint meeting_action_history_pk primary key (id, revision),
    constraint meeting_action_history_revision_fk foreign key (revision) references revision (id)
);

-- What became of an action: done, dropped with a reason, or opened again. Written once each; the last one counts.
create sequence meeting_action_step_seq increment by 50;
create table meeting_action_step (
    id bigint not null,
    action_id bigint not null,
    number integer not null,
    state varchar(10) not null,
    reason varchar(500),
    happened_on date not null,
    recorded_by varchar(120) not null,
    recorded_at timestamp with time zone not null,
    constraint meeting_action_step_pk primary key (id),
    constraint meeting_action_step_action_fk foreign key (action_id) references meeting_action (id),
    constraint meeting_action_step_once unique (action_id, number),
    constraint meeting_action_step_dropped_with_reason check (state = 'DONE' or reason is not null)
);

-- The minutes of a closed meeting. The key on (meeting, version) holds the meeting still: once this row is there the database refuses
-- every further change in it.
create table meeting_minutes (
    meeting_id bigint not null,
    meeting_version integer not null,
    words text not null,
    pdf bytea not null,
    pages integer not null,
    sha256 varchar(64) not null,
    closed_by_id bigint not null,
    closed_at timestamp with time zone not null,
    constraint meeting_minutes_pk primary key (meeting_id),
    constraint meeting_minutes_version_fk foreign key (meeting_id, meeting_version) references review_meeting (id, version),
    constraint meeting_minutes_closer_fk foreign key (closed_by_id) references account (id),
    constraint meeting_minutes_fingerprint_whole check (length(sha256) = 64)
);

create sequence meeting_addendum_seq increment by 50;
create table meeting_addendum (
    id bigint not null,
    meeting_id bigint not null,
    words text not null,
    written_by varchar(120) not null,
    written_at timestamp with time zone not null,
    constraint meeting_addendum_pk primary key (id),
    constraint meeting_addendum_minutes_fk foreign key (meeting_id) references meeting_minutes (meeting_id)
);
