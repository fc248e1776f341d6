# Generates cohorts, follows them with R's survival package, and writes what it gives; fourfold tables by fisher.test likewise.
# See README.md for how to run it. Event and end of following fall on whole days, so that many are tied.
#
# median: the first time at which the curve is 0.5 or less (survfit itself takes the middle of a stretch at exactly 0.5).

library(survival)
arguments <- commandArgs(trailingOnly = TRUE)
cohorts <- if (length(arguments) > 0) as.integer(arguments[1]) else 1000
to <- if (length(arguments) > 1) arguments[2] else "."
kept_to <- if (length(arguments) > 2) arguments[3] else to
kept <- 40
set.seed(20261125)

shown <- function(x) paste(ifelse(is.na(x), "none", sprintf("%.12g", x)), collapse = " ")
first <- function(times, reached) if (any(reached, na.rm = TRUE)) times[which(reached)[1]] else NA

curve <- function(time, event, scale) {
  fit <- survfit(Surv(time, event) ~ 1, conf.type = scale, se.fit = TRUE)
  steps <- fit$n.event > 0
  inside <- fit$surv > 1e-12 & fit$surv < 1
  list(time = fit$time[steps], risk = fit$n.risk[steps], events = fit$n.event[steps], surv = fit$surv[steps],
    se = ifelse(fit$surv <= 1e-12, 0, fit$surv * fit$std.err)[steps],
    low = ifelse(inside, fit$lower, NA)[steps], high = ifelse(inside, fit$upper, NA)[steps])
}

one <- function(i) {
  n <- if (i %% 50 == 0) 1000 else sample(2:80, 1)
  group <- rbinom(n, 1, 0.5)
  if (length(unique(group)) < 2) group[1:2] <- 0:1
  event_day <- ceiling(rweibull(n, shape = runif(1, 0.6, 2), scale = runif(1, 10, 90) * ifelse(group == 1, runif(1, 0.5, 2), 1)))
  end_day <- if (i %% 7 == 0) rep(Inf, n) else ceiling(runif(n, 1, runif(1, 20, 200)))
  time <- pmin(event_day, end_day)
  event <- as.integer(event_day <= end_day)
  if (sum(event) == 0) event[1] <- 1L
  r <- curve(time, event, "log-log")
  other <- lapply(c("log", "plain"), function(scale) curve(time, event, scale))
  median_of <- function(height) first(r$time, height <= 0.5 + 1e-10)
  test <- survdiff(Surv(time, event) ~ group)
  # two groups never at risk together have no variance to test with
  chi <- if (test$var[1, 1] > 1e-12) test$chisq else NA
  data.frame(times = shown(time), events = shown(event), groups = shown(group), step_times = shown(r$time), at_risk = shown(r$risk),
    step_events = shown(r$events), survival = shown(r$surv), standard_error = shown(r$se), low = shown(r$low), high = shown(r$high),
    log_low = shown(other[[1]]$low), log_high = shown(other[[1]]$high), plain_low = shown(other[[2]]$low), plain_high = shown(other[[2]]$high),
    median = shown(median_of(r$surv)), median_low = shown(median_of(r$low)), median_high = shown(median_of(r$high)),
    observed = shown(test$obs[1]), expected = shown(test$exp[1]), variance = shown(test$var[1, 1]), chi_square = shown(chi),
    p = shown(if (is.na(chi)) NA else pchisq(chi, 1, lower.tail = FALSE)))
}

all <- do.call(rbind, lapply(seq_len(cohorts), one))
tables <- t(sapply(1:200, function(i) {
  x <- rpois(4, runif(4, 0.5, if (i %% 10 == 0) 200 else 20)); if (sum(x) == 0) x[1] <- 1; x }))
tables <- tables[apply(tables, 1, function(x) all(x[1] + x[2] > 0, x[3] + x[4] > 0, x[1] + x[3] > 0, x[2] + x[4] > 0)), ]
exact <- do.call(rbind, lapply(seq_len(nrow(tables)), function(i) {
  x <- tables[i, ]; f <- fisher.test(matrix(x, 2, byrow = TRUE))
  data.frame(both = x[1], finding_only = x[2], complaint_only = x[3], neither = x[4], p = shown(f$p.value), odds_ratio = shown(f$estimate),
    low = shown(f$conf.int[1]), high = shown(f$conf.int[2])) }))

write <- function(folder, name, data) {
  file <- file(file.path(folder, name), "w")
  writeLines(paste0("# Source: computed by survival.R, ", R.version.string, ", survival ", packageVersion("survival")), file)
  write.csv(data, file, row.names = FALSE, quote = FALSE)
  close(file)
}
write(to, "survival-all-r.csv", all)
small <- all[sapply(strsplit(all$times, " "), length) <= 80, ]
write(kept_to, "survival-r.csv", small[seq_len(min(kept, nrow(small))), ])
write(kept_to, "exact-r.csv", exact)
cat(R.version.string, "survival", as.character(packageVersion("survival")), "\n")
people <- sapply(strsplit(all$times, " "), length)
cat(nrow(all), "cohorts,", sum(people), "people, from", min(people), "to", max(people), "a cohort;", sum(all$median == "none"),
  "without a median;", sum(all$chi_square == "none"), "without a log-rank test\n")
cat(nrow(exact), "fourfold tables,", sum(exact$odds_ratio == "Inf" | exact$odds_ratio == "0"), "with an odds ratio of 0 or infinity\n")
