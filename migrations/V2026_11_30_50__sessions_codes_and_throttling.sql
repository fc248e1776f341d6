-- Everybody signs in anew after this change: the sessions kept before hold neither a number nor an address.
delete from sign_in_session;
create sequence sign_in_session_seq increment by 50;
alter table sign_in_session add column id bigint not null;
alter table sign_in_session add column address varchar(60);
alter table sign_in_session add column browser varchar(60);
alter table sign_in_session add column awaiting varchar(20);
alter table sign_in_session add column wrong_codes integer not null;
alter table sign_in_session add constraint sign_in_session_id_once unique (id);
alter table sign_in_session add constraint sign_in_session_awaiting_known check (
    case awaiting when 'CODE' then 1 when 'ENROLMENT' then 1 else case when awaiting is null then 1 else 0 end end = 1);

-- The second factor: the key of the one-time codes, when it was confirmed, and the last time step that was taken.
alter table account add column code_key varchar(300);
alter table account add column code_confirmed_at timestamp with time zone;
alter table account add column code_last_step bigint;

create sequence recovery_code_seq increment by 50;
create table recovery_code (
    id bigint not null,
    account_id bigint not null,
    code_hash varchar(64) not null,
    used_at timestamp with time zone,
    constraint recovery_code_pk primary key (id),
    constraint recovery_code_account_fk foreign key (account_id) references account (id)
);
create index recovery_code_account on recovery_code (account_id);

create table sign_in_link (
    token_hash varchar(64) not null,
    account_id bigint not null,
    made_at timestamp with time zone not null,
    expires_at timestamp with time zone not null,
    made_by varchar(60) not null,
    used_at timestamp with time zone,
    constraint sign_in_link_pk primary key (token_hash),
    constraint sign_in_link_account_fk foreign key (account_id) references account (id),
    constraint sign_in_link_expires_later check (expires_at > made_at)
);
create index sign_in_link_account on sign_in_link (account_id);

-- Tries at signing in, by the hash of what they are counted for: name and address, address alone, name alone.
create table sign_in_tries (
    subject varchar(64) not null,
    tries integer not null,
    last_at timestamp with time zone not null,
    next_at timestamp with time zone,
    constraint sign_in_tries_pk primary key (subject)
);

-- From where an account was signed in rightly; delays made by others do not hold there.
create table known_address (
    account_id bigint not null,
    address varchar(60) not null,
    last_at timestamp with time zone not null,
    constraint known_address_pk primary key (account_id, address),
    constraint known_address_account_fk foreign key (account_id) references account (id)
);
