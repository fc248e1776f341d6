-- What stands at a site, so that a second worker at the same desk starts from it. Sizes in mm, each with how and when it was known.
create sequence room_seq increment by 50;
create table room (
    id bigint not null,
    version integer not null,
    site_id bigint not null,
    name varchar(120) not null,
    note varchar(500),
    retired_on date,
    constraint room_pk primary key (id),
    constraint room_site_fk foreign key (site_id) references site (id)
);
create index room_site on room (site_id);

create sequence furniture_seq increment by 50;
create table furniture (
    id bigint not null,
    version integer not null,
    room_id bigint not null,
    kind varchar(20) not null,
    name varchar(120) not null,
    stands_on_it varchar(500),
    note varchar(500),
    retired_on date,
    constraint furniture_pk primary key (id),
    constraint furniture_room_fk foreign key (room_id) references room (id)
);
create index furniture_room on furniture (room_id);

create table furniture_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    room_id bigint,
    kind varchar(20),
    name varchar(120),
    stands_on_it varchar(500),
    note varchar(500),
    retired_on date,
    constraint furniture_history_pk primary key (id, revision),
    constraint furniture_history_revision_fk foreign key (revision) references revision (id)
);

create sequence furniture_size_seq increment by 50;
create table furniture_size (
    id bigint not null,
    furniture_id bigint not null,
    size varchar(40) not null,
    amount numeric(10, 3) not null,
    how varchar(20) not null,
    known_on date not null,
    constraint furniture_size_pk primary key (id),
    constraint furniture_size_furniture_fk foreign key (furniture_id) references furniture (id),
    constraint furniture_size_once unique (furniture_id, size)
);

create table furniture_size_history (
    id bigint not null,
    revision bigint not null,
    revision_kind smallint,
    furniture_id bigint,
    size varchar(40),
    amount numeric(10, 3),
    how varchar(20),
    known_on date,
    constraint furniture_size_history_pk primary key (id, revision),
    constraint furniture_size_history_revision_fk foreign key (revision) references revision (id)
);

alter table workplace_assessment add column desk_id bigint;
alter table workplace_assessment add column chair_id bigint;
alter table workplace_assessment add constraint workplace_assessment_desk_fk foreign key (desk_id) references furniture (id);
alter table workplace_assessment add constraint workplace_assessment_chair_fk foreign key (chair_id) references furniture (id);
alter table workplace_assessment_history add column desk_id bigint;
alter table workplace_assessment_history add column chair_id bigint;
create index workplace_assessment_desk on workplace_assessment (desk_id);
create index workplace_assessment_chair on workplace_assessment (chair_id);
