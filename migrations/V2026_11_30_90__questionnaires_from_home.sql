alter table own_report add column sending varchar(60);
alter table own_report add column worse text;
alter table own_report add constraint own_report_sent_once unique (case_file_id, sending);

create table own_report_answer (
    own_report_id bigint not null,
    place integer not null,
    instrument varchar(40) not null,
    instrument_version varchar(40) not null,
    answers varchar(400) not null,
    constraint own_report_answer_pk primary key (own_report_id, place),
    constraint own_report_answer_report_fk foreign key (own_report_id) references own_report (id)
);
