-- Employers and sites that are no longer in use are retired, never deleted: patients and letters point to them.
alter table employer add column retired_on date;
alter table site add column retired_on date;
alter table site add column address varchar(400);

create sequence employer_contact_seq increment by 50;
create table employer_contact (
    id bigint not null,
    version integer not null,
    employer_id bigint not null,
    name varchar(120) not null,
    role varchar(120),
    phone varchar(40),
    email varchar(120),
    retired_on date,
    constraint employer_contact_pk primary key (id),
    constraint employer_contact_employer_fk foreign key (employer_id) references employer (id)
);
create index employer_contact_employer on employer_contact (employer_id);
create index site_employer on site (employer_id);
create index patient_site on patient (site_id);
