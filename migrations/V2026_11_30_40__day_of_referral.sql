-- The day on which the case was referred, from which the wait for the first visit counts; null when it is not known.
alter table case_file add column referred_on date;
alter table case_file add constraint case_file_referred_before_opening check (referred_on is null or referred_on <= opened_on);
alter table case_file_history add column referred_on date;
