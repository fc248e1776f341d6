-- A session told of an exercise that was suspended or ended by the day it was done: kept, and marked.
alter table session_tick add column meanwhile varchar(10);
alter table session_tick add constraint session_tick_meanwhile check (meanwhile is null or case meanwhile when 'SUSPENDED' then 1 when 'ENDED' then 1 else 0 end = 1);
