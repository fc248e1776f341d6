-- the lists of missed visits and of cases without a next appointment read every visit of the clinic for the few they want
create index visit_attendance on visit (attendance, visited_on, case_file_id);
