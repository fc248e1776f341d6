create sequence file_number_seq increment by 1 start with 1;

create sequence employer_seq increment by 50;
create table employer (
    id bigint not null,
    version integer not null,
    name varchar(120) not null,
    search_name varchar(200) not null,
    contact_name varchar(120),
    address varchar(400),
    phone varchar(40),
    email varchar(120),
    constraint employer_pk primary key (id),
    constraint employer_name_once unique (search_name)
);

create sequence site_seq increment by 50;
create table site (
    id bigint not null,
    version integer not null,
    employer_id bigint not null,
    name varchar(120) not null,
    constraint site_pk primary key (id),
    constraint site_employer_fk foreign key (employer_id) references employer (id),
    constraint site_name_once unique (employer_id, name)
);

create sequence correspondent_seq increment by 50;
create table correspondent (
    id bigint not null,
    version integer not null,
    kind varchar(20) not null,
    name varchar(120) not null,
    search_name varchar(200) not null,
    organisation varchar(160),
    address varchar(400),
    phone varchar(40),
    email varchar(120),
    constraint correspondent_pk primary key (id)
);
create index correspondent_search_name on correspondent (search_name);

create sequence patient_seq increment by 50;
create table patient (
    id bigint not null,
    version integer not null,
    file_number varchar(20) not null,
    given_name varchar(80) not null,
    family_name varchar(80) not null,
    search_name varchar(320) not null,
    birth_date date not null,
    sex varchar(20) not null,
    handedness varchar(20) not null,
    job_title varchar(120),
    employer_id bigint,
    site_id bigint,
    department varchar(120),
    hours_a_week numeric(4, 1),
    doctor_id bigint,
    phone varchar(40),
    email varchar(120),
    address varchar(400),
    registered_on date not null,
    constraint patient_pk primary key (id),
    constraint patient_file_number_once unique (file_number),
    constraint patient_born_before_registered check (birth_date <= registered_on),
    constraint patient_hours_possible check (hours_a_week is null or (hours_a_week >= 0 and hours_a_week <= 100)),
    constraint patient_employer_fk foreign key (employer_id) references employer (id),
    constraint patient_site_fk foreign key (site_id) references site (id),
    constraint patient_doctor_fk foreign key (doctor_id) references correspondent (id)
);
create index patient_birth_date on patient (birth_date);
create index patient_employer on patient (employer_id);

create table patient_gram (
    patient_id bigint not null,
    gram varchar(3) not null,
    constraint patient_gram_pk primary key (gram, patient_id),
    constraint patient_gram_patient_fk foreign key (patient_id) references patient (id)
);
create index patient_gram_patient on patient_gram (patient_id);

create table patient_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    file_number varchar(20),
    given_name varchar(80),
    family_name varchar(80),
    search_name varchar(320),
    birth_date date,
    sex varchar(20),
    handedness varchar(20),
    job_title varchar(120),
    employer_id bigint,
    site_id bigint,
    department varchar(120),
    hours_a_week numeric(4, 1),
    doctor_id bigint,
    phone varchar(40),
    email varchar(120),
    address varchar(400),
    registered_on date,
    constraint patient_history_pk primary key (id, revision),
    constraint patient_history_revision_fk foreign key (revision) references revision (id)
);
