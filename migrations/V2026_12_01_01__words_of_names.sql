-- A search by name reads the few words that begin as typed, in their order, and stops; runs of three letters made it read every
-- patient who shares one. "beginning" is compared as a whole, so that no collation has a say in which rows an index holds together.
create table patient_word (
    patient_id bigint not null,
    beginning varchar(2) not null,
    word varchar(250) not null,
    constraint patient_word_pk primary key (patient_id, word),
    constraint patient_word_patient_fk foreign key (patient_id) references patient (id)
);

create table place_in_name (place integer primary key);
insert into place_in_name (place)
    select ones.digit + 10 * tens.digit + 100 * hundreds.digit
    from (values (0), (1), (2), (3), (4), (5), (6), (7), (8), (9)) as ones (digit)
    cross join (values (0), (1), (2), (3), (4), (5), (6), (7), (8), (9)) as tens (digit)
    cross join (values (0), (1), (2), (3)) as hundreds (digit)
    where ones.digit + 10 * tens.digit + 100 * hundreds.digit between 1 and 320;

-- search_name holds its words apart by one blank
insert into patient_word (patient_id, beginning, word)
    select distinct named.id, substring(named.word from 1 for 2), named.word
    from (
        select patient.id as id,
            substring(patient.search_name from place_in_name.place
                for position(' ' in substring(patient.search_name from place_in_name.place) || ' ') - 1) as word
        from patient
        join place_in_name on place_in_name.place <= char_length(patient.search_name)
        where place_in_name.place = 1 or substring(patient.search_name from place_in_name.place - 1 for 1) = ' '
    ) as named
    where named.word <> '';

drop table place_in_name;
create index patient_word_beginning on patient_word (beginning, word, patient_id);
create index patient_word_word on patient_word (word, patient_id);
drop table patient_gram;

-- some letters take two or three in a search key: names of full length were refused
alter table patient alter column search_name set data type varchar(500);
alter table patient_history alter column search_name set data type varchar(500);
alter table employer alter column search_name set data type varchar(400);
alter table correspondent alter column search_name set data type varchar(400);
