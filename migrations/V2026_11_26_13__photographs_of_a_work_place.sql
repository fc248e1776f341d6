-- A photograph belongs to one assessment. Its bytes stand apart, so that lists never load them, and go when it is withdrawn; the record stays.
create sequence workplace_photo_seq increment by 50;
create table workplace_photo (
    id bigint not null,
    version integer not null,
    assessment_id bigint not null,
    caption varchar(300) not null,
    may_leave boolean not null,
    width integer not null,
    height integer not null,
    sha256 varchar(64) not null,
    added_by varchar(160) not null,
    added_at timestamp with time zone not null,
    withdrawn_by varchar(160),
    withdrawn_at timestamp with time zone,
    withdrawal_reason varchar(300),
    constraint workplace_photo_pk primary key (id),
    constraint workplace_photo_assessment_fk foreign key (assessment_id) references workplace_assessment (id),
    constraint workplace_photo_withdrawn_with_reason check (withdrawn_at is null or withdrawal_reason is not null),
    constraint workplace_photo_withdrawn_stays check (withdrawn_at is null or may_leave = false)
);
create index workplace_photo_assessment on workplace_photo (assessment_id);

create table workplace_photo_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    assessment_id bigint,
    caption varchar(300),
    may_leave boolean,
    width integer,
    height integer,
    sha256 varchar(64),
    added_by varchar(160),
    added_at timestamp with time zone,
    withdrawn_by varchar(160),
    withdrawn_at timestamp with time zone,
    withdrawal_reason varchar(300),
    constraint workplace_photo_history_pk primary key (id, revision),
    constraint workplace_photo_history_revision_fk foreign key (revision) references revision (id)
);

create table workplace_photo_image (
    photo_id bigint not null,
    picture bytea not null,
    thumbnail bytea not null,
    constraint workplace_photo_image_pk primary key (photo_id),
    constraint workplace_photo_image_photo_fk foreign key (photo_id) references workplace_photo (id)
);
