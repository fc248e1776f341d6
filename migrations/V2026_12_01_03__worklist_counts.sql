-- the counts above Today are read from this index alone
create index worklist_entry_counts on worklist_entry (cleared_on, rule, urgency, put_off_until);
