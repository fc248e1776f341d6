create sequence care_team_member_seq increment by 50;
create table care_team_member (
    id bigint not null,
    case_file_id bigint not null,
    account_id bigint not null,
    added_at timestamp with time zone not null,
    added_by varchar(60) not null,
    constraint care_team_member_pk primary key (id),
    constraint care_team_member_case_fk foreign key (case_file_id) references case_file (id),
    constraint care_team_member_account_fk foreign key (account_id) references account (id),
    constraint care_team_member_once unique (case_file_id, account_id)
);

create sequence break_glass_seq increment by 50;
create table break_glass (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    account_id bigint not null,
    reason varchar(400) not null,
    opened_at timestamp with time zone not null,
    until_at timestamp with time zone not null,
    looked_at timestamp with time zone,
    looked_by varchar(60),
    constraint break_glass_pk primary key (id),
    constraint break_glass_case_fk foreign key (case_file_id) references case_file (id),
    constraint break_glass_account_fk foreign key (account_id) references account (id),
    constraint break_glass_ends_later check (until_at > opened_at),
    constraint break_glass_looked_whole check ((looked_at is null) = (looked_by is null))
);
create index break_glass_case on break_glass (case_file_id, account_id);
