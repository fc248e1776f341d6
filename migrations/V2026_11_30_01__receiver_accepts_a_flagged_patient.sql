-- Whoever was called took the patient over: with that on record a case can end while its flag is still open.
alter table red_flag_call add column accepted boolean default false not null;
alter table red_flag_call_history add column accepted boolean;
