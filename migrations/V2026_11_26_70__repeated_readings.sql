-- The single readings of a measure that was read more than once, as typed, parted by semicolons; null when it was read once.
alter table workplace_measurement add column readings varchar(60);
alter table workplace_measurement_history add column readings varchar(60);
