-- A report on the people of one employer whose cases were opened in one closed half-year: a draft with a word to the reader, then signed.
create sequence group_report_seq increment by 50;
create table group_report (
    id bigint not null,
    version integer not null,
    employer_id bigint not null,
    period varchar(10) not null,
    comment varchar(2000),
    saved_by_id bigint not null,
    saved_at timestamp with time zone not null,
    constraint group_report_pk primary key (id),
    constraint group_report_once unique (employer_id, period),
    constraint group_report_version_once unique (id, version),
    constraint group_report_employer_fk foreign key (employer_id) references employer (id),
    constraint group_report_saver_fk foreign key (saved_by_id) references account (id)
);

-- A signed report: one a period, for good. The key on (report, version) holds the draft still, as for letters. What it says is kept
-- with its file and never counted again, so that two copies of one period cannot differ by anybody.
create table signed_group_report (
    report_id bigint not null,
    report_version integer not null,
    reference varchar(60) not null,
    signed_by_id bigint not null,
    signed_at timestamp with time zone not null,
    content text not null,
    pages integer not null,
    sha256 varchar(64) not null,
    pdf bytea not null,
    constraint signed_group_report_pk primary key (report_id),
    constraint signed_group_report_version_fk foreign key (report_id, report_version) references group_report (id, version),
    constraint signed_group_report_signer_fk foreign key (signed_by_id) references account (id),
    constraint signed_group_report_reference_once unique (reference),
    constraint signed_group_report_fingerprint_whole check (length(sha256) = 64),
    constraint signed_group_report_has_pages check (pages >= 1)
);
