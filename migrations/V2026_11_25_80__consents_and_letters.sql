-- Consent to disclose to one named reader. What is not ticked was not agreed to.
create sequence disclosure_consent_seq increment by 50;
create table disclosure_consent (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    recipient_kind varchar(20) not null,
    correspondent_id bigint,
    employer_id bigint,
    recipient_name varchar(300) not null,
    given_how varchar(20) not null,
    given_on date not null,
    holds_until date not null,
    ticked varchar(400),
    shown_text text not null,
    withdrawn_on date,
    withdrawn_how varchar(300),
    recorded_by_id bigint not null,
    constraint disclosure_consent_pk primary key (id),
    constraint disclosure_consent_case_fk foreign key (case_file_id) references case_file (id),
    constraint disclosure_consent_correspondent_fk foreign key (correspondent_id) references correspondent (id),
    constraint disclosure_consent_employer_fk foreign key (employer_id) references employer (id),
    constraint disclosure_consent_recorder_fk foreign key (recorded_by_id) references account (id),
    constraint disclosure_consent_ends_after_it_begins check (holds_until >= given_on),
    constraint disclosure_consent_withdrawn_after_given check (withdrawn_on is null or withdrawn_on >= given_on)
);
create index disclosure_consent_case on disclosure_consent (case_file_id);

create table disclosure_consent_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    recipient_kind varchar(20),
    correspondent_id bigint,
    employer_id bigint,
    recipient_name varchar(300),
    given_how varchar(20),
    given_on date,
    holds_until date,
    ticked varchar(400),
    shown_text text,
    withdrawn_on date,
    withdrawn_how varchar(300),
    recorded_by_id bigint,
    constraint disclosure_consent_history_pk primary key (id, revision),
    constraint disclosure_consent_history_revision_fk foreign key (revision) references revision (id)
);

-- A letter being written. Numbers count within the patient, so that a reference names one letter.
create sequence letter_seq increment by 50;
create table letter (
    id bigint not null,
    version integer not null,
    case_file_id bigint not null,
    patient_id bigint not null,
    number integer not null,
    kind varchar(60) not null,
    recipient_kind varchar(20) not null,
    correspondent_id bigint,
    employer_id bigint,
    texts text not null,
    drafted_by_id bigint not null,
    drafted_at timestamp with time zone not null,
    saved_by_id bigint not null,
    saved_at timestamp with time zone not null,
    constraint letter_pk primary key (id),
    constraint letter_case_fk foreign key (case_file_id) references case_file (id),
    constraint letter_patient_fk foreign key (patient_id) references patient (id),
    constraint letter_correspondent_fk foreign key (correspondent_id) references correspondent (id),
    constraint letter_employer_fk foreign key (employer_id) references employer (id),
    constraint letter_drafter_fk foreign key (drafted_by_id) references account (id),
    constraint letter_saver_fk foreign key (saved_by_id) references account (id),
    constraint letter_number_once unique (patient_id, number),
    constraint letter_numbers_count_from_one check (number >= 1),
    constraint letter_version_once unique (id, version),
    constraint letter_has_one_reader check ((correspondent_id is null) <> (employer_id is null))
);
create index letter_case on letter (case_file_id);

create table letter_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    case_file_id bigint,
    patient_id bigint,
    number integer,
    kind varchar(60),
    recipient_kind varchar(20),
    correspondent_id bigint,
    employer_id bigint,
    texts text,
    drafted_by_id bigint,
    drafted_at timestamp with time zone,
    saved_by_id bigint,
    saved_at timestamp with time zone,
    constraint letter_history_pk primary key (id, revision),
    constraint letter_history_revision_fk foreign key (revision) references revision (id)
);

-- A signed letter: one a letter, of exactly one version. The key on (letter, version) holds the letter still: once this
-- row is there the database refuses every new version of the letter, and its removal. Nothing writes here but the signing.
create table signed_letter (
    letter_id bigint not null,
    letter_version integer not null,
    signed_by_id bigint not null,
    signed_at timestamp with time zone not null,
    reference varchar(60) not null,
    recipient_name varchar(300) not null,
    basis varchar(2000) not null,
    confirmed varchar(4000),
    pages integer not null,
    sha256 varchar(64) not null,
    pdf bytea not null,
    constraint signed_letter_pk primary key (letter_id),
    constraint signed_letter_version_fk foreign key (letter_id, letter_version) references letter (id, version),
    constraint signed_letter_signer_fk foreign key (signed_by_id) references account (id),
    constraint signed_letter_reference_once unique (reference),
    constraint signed_letter_fingerprint_whole check (length(sha256) = 64),
    constraint signed_letter_has_pages check (pages >= 1)
);

-- A signed letter is not taken back by changing it: this says that it should no longer be relied on.
create table letter_withdrawal (
    letter_id bigint not null,
    withdrawn_by_id bigint not null,
    withdrawn_at timestamp with time zone not null,
    reason varchar(1000) not null,
    constraint letter_withdrawal_pk primary key (letter_id),
    constraint letter_withdrawal_letter_fk foreign key (letter_id) references signed_letter (letter_id),
    constraint letter_withdrawal_account_fk foreign key (withdrawn_by_id) references account (id)
);

-- What happened with a letter outside the clinic: shown to the worker, sent.
create sequence letter_event_seq increment by 50;
create table letter_event (
    id bigint not null,
    letter_id bigint not null,
    letter_version integer not null,
    kind varchar(30) not null,
    happened_on date not null,
    how varchar(200) not null,
    note varchar(2000),
    recorded_by_id bigint not null,
    recorded_at timestamp with time zone not null,
    constraint letter_event_pk primary key (id),
    constraint letter_event_letter_fk foreign key (letter_id) references letter (id),
    constraint letter_event_account_fk foreign key (recorded_by_id) references account (id)
);
create index letter_event_letter on letter_event (letter_id);

-- Acting without consent: who decided, on what ground, what goes to whom, why, and whether the worker knows.
create sequence disclosure_override_seq increment by 50;
create table disclosure_override (
    id bigint not null,
    letter_id bigint not null,
    ground varchar(20) not null,
    decided_by varchar(200) not null,
    ground_text varchar(2000) not null,
    what varchar(2000) not null,
    why_no_consent varchar(2000) not null,
    worker_told varchar(1000) not null,
    recorded_by_id bigint not null,
    recorded_at timestamp with time zone not null,
    constraint disclosure_override_pk primary key (id),
    constraint disclosure_override_once unique (letter_id),
    constraint disclosure_override_letter_fk foreign key (letter_id) references letter (id),
    constraint disclosure_override_account_fk foreign key (recorded_by_id) references account (id)
);
