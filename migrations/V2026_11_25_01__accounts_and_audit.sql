create sequence account_seq increment by 50;
create table account (
    id bigint not null,
    version integer not null,
    user_name varchar(60) not null,
    full_name varchar(120) not null,
    display_name varchar(60) not null,
    profession varchar(80),
    registration varchar(60),
    password_hash varchar(100),
    role varchar(20) not null,
    active boolean not null,
    created_at timestamp with time zone not null,
    constraint account_pk primary key (id),
    constraint account_user_name_once unique (user_name),
    constraint account_role_known check (role in ('CLINICIAN', 'ASSISTANT', 'LEAD'))
);

create table sign_in_session (
    token_hash varchar(64) not null,
    account_id bigint not null,
    began_at timestamp with time zone not null,
    seen_at timestamp with time zone not null,
    constraint sign_in_session_pk primary key (token_hash),
    constraint sign_in_session_account_fk foreign key (account_id) references account (id)
);
create index sign_in_session_account on sign_in_session (account_id);

create sequence audit_event_seq increment by 50;
create table audit_event (
    id bigint not null,
    happened_at timestamp with time zone not null,
    account_id bigint,
    actor varchar(60) not null,
    action varchar(60) not null,
    patient_id bigint,
    case_file_id bigint,
    detail varchar(400),
    constraint audit_event_pk primary key (id)
);
create index audit_event_patient on audit_event (patient_id, id);

-- The history of clinical entries: one revision a transaction, with its author.
create sequence revision_seq increment by 50;
create table revision (
    id bigint not null,
    made_at bigint not null,
    author varchar(60),
    constraint revision_pk primary key (id)
);
