-- H2 keeps the values of "in (…)" in a check in a set that is sorted by the connection which made the check; once that connection is closed, as
-- the pool does with idle ones, every insert is refused until the database is opened anew. The same rules, said without a list.
alter table account drop constraint account_role_known;
alter table account add constraint account_role_known check (
    case role when 'CLINICIAN' then 1 when 'ASSISTANT' then 1 when 'LEAD' then 1 else 0 end = 1);

alter table work_plan drop constraint work_plan_step;
alter table work_plan add constraint work_plan_step check (step_minutes >= 30 and step_minutes <= 60 and mod(step_minutes, 30) = 0);

alter table goal drop constraint goal_baseline;
alter table goal add constraint goal_baseline check (baseline is null or (baseline >= -2 and baseline <= -1));
