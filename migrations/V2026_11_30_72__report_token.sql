-- Tokens by which a program reads figures; the token itself is not stored, only its fingerprint.
create sequence report_token_seq increment by 50;
create table report_token (
    id bigint not null,
    version integer not null,
    name varchar(80) not null,
    token_hash varchar(64) not null,
    scopes varchar(200) not null,
    pseudonym_key varchar(64) not null,
    made_by varchar(120) not null,
    made_at timestamp with time zone not null,
    expires_on date not null,
    revoked_by varchar(120),
    revoked_at timestamp with time zone,
    last_used_at timestamp with time zone,
    constraint report_token_pk primary key (id),
    constraint report_token_hash_once unique (token_hash)
);
