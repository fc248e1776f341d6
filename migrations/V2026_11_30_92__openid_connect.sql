-- Signing in through the clinic's OpenID Connect provider: the lead marks the account, the first sign-in links it to one person there.
alter table account add column openid_allowed boolean default false not null;
alter table account add column openid_issuer varchar(400);
alter table account add column openid_subject varchar(255);
alter table account add column openid_linked_at timestamp with time zone;
alter table account add constraint account_openid_once unique (openid_issuer, openid_subject);
alter table account add constraint account_openid_whole check (
    (openid_issuer is null and openid_subject is null and openid_linked_at is null)
    or (openid_allowed and openid_issuer is not null and openid_subject is not null and openid_linked_at is not null));

-- How the sign-in began whose second factor is still awaited.
alter table sign_in_session add column first_step varchar(20) default 'PASSWORD' not null;
