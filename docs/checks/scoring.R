# Scores random answer sets by rules written down here from the publications, without a look at the product's code,
# and compares with what the product made of the same answers. See README.md for how to run it.
#
# Sources of the rules: Vernon and Mior 1991 and the author's note; Fairbank and Pynsent 2000; Roland and Morris 1983 with
# Kent and Lauridsen; the DASH scoring guide; Roach 1991; MacDermid's manual; Levine 1993; Binkley 1999; Linton 2011;
# Hill 2008; Dunn 2021; Hill 2016; Kuorinka 1987; Kiresuk and Sherman 1968; Mathiowetz 1985; Theil 1950 and Sen 1968.

arguments <- commandArgs(trailingOnly = TRUE)
from <- if (length(arguments) > 0) arguments[1] else "."
to <- if (length(arguments) > 1) arguments[2] else "."
tolerance <- 1e-9
kept <- 50

nothing <- list(value = NA, low = NA, high = NA, parts = numeric(0), groups = character(0))
scored <- function(value, parts = numeric(0)) list(value = value, low = value, high = value, parts = parts, groups = character(0))

# --- rules ---------------------------------------------------------------------------------------------------------

single <- function(a) if (is.na(a[1])) nothing else scored(a[1])

mean_if <- function(least) function(a) if (sum(!is.na(a)) < least) nothing else scored(mean(a, na.rm = TRUE))

percent_of_possible <- function(a, least, most = 5) {
  known <- a[!is.na(a)]
  if (length(known) < least) nothing else scored(100 * sum(known) / (most * length(known)))
}

disability_arm <- function(least) function(a) {
  known <- a[!is.na(a)]
  if (length(known) < least) nothing else scored((sum(known) / length(known) - 1) * 25)
}

scaled_up <- function(least, most) function(a) {
  known <- a[!is.na(a)]
  if (length(known) < least) nothing else scored(sum(known) * length(a) / length(known))
}

shoulder_index <- function(a) {
  if (sum(is.na(a)) > 2) return(nothing)
  share <- function(x) 10 * mean(x, na.rm = TRUE)
  parts <- c(share(a[1:5]), share(a[6:13]))
  if (any(is.nan(parts))) nothing else scored(mean(parts), parts)
}

elbow_evaluation <- function(a) {
  pain <- a[1:5]; action <- a[6:15]
  if (sum(is.na(pain)) > 1 || sum(is.na(action)) > 2) return(nothing)
  pain[is.na(pain)] <- mean(pain, na.rm = TRUE)
  action[is.na(action)] <- mean(action, na.rm = TRUE)
  parts <- c(sum(pain), sum(action) / 2)
  scored(sum(parts), parts)
}

risk_short_form <- function(a) {
  if (all(is.na(a))) return(nothing)
  turned <- a
  for (i in c(3, 4, 8)) turned[i] <- 10 - a[i]
  lowest <- c(1, rep(0, 9))
  low <- sum(ifelse(is.na(turned), lowest, turned))
  high <- sum(ifelse(is.na(turned), 10, turned))
  if (any(is.na(a))) list(value = NA, low = low, high = high, parts = numeric(0), groups = character(0)) else scored(low)
}

# every completion of the missing answers is tried
completed <- function(a, ranges, one) {
  if (all(is.na(a))) return(NULL)
  choices <- lapply(seq_along(a), function(i) if (is.na(a[i])) unique(one(i, ranges[[i]])) else one(i, a[i]))
  as.matrix(expand.grid(choices))
}

risk_group <- function(ranges, one, group, order, part) function(a) {
  all <- completed(a, ranges, one)
  if (is.null(all)) return(nothing)
  totals <- rowSums(all)
  subscale <- if (length(part) == 0) rep(0, nrow(all)) else rowSums(all[, part, drop = FALSE])
  groups <- order[order %in% unique(mapply(group, totals, subscale))]
  if (any(is.na(a))) list(value = NA, low = min(totals), high = max(totals), parts = numeric(0), groups = groups)
  else list(value = totals[[1]], low = totals[[1]], high = totals[[1]], parts = if (length(part) == 0) numeric(0) else subscale[[1]], groups = groups)
}

back_screen <- risk_group(c(rep(list(0:1), 8), list(0:4)), function(i, x) if (i == 9) as.numeric(x >= 3) else x,
  function(total, distress) if (total <= 3) "low" else if (distress >= 4) "high" else "medium", c("high", "medium", "low"), 5:9)

any_region_screen <- risk_group(c(list(0:10), rep(list(0:1), 9)),
  function(i, x) if (i == 1) ifelse(x <= 4, 0, ifelse(x <= 6, 1, ifelse(x <= 8, 2, 3))) else x,
  function(total, none) if (total <= 4) "low" else if (total <= 8) "medium" else "high", c("high", "medium", "low"), integer(0))

region_survey <- function(a) {
  if (all(is.na(a))) return(nothing)
  m <- matrix(a, ncol = 3, byrow = TRUE)
  for (i in 1:9) if (!is.na(m[i, 1]) && m[i, 1] == 0) {
    wrong <- which(!is.na(m[i, 2:3]) & m[i, 2:3] == 1)
    if (length(wrong) > 0) return(list(refused = (i - 1) * 3 + 1 + wrong[1]))
  }
  list(value = NA, low = NA, high = NA, parts = colSums(m, na.rm = TRUE), groups = character(0))
}

rules <- list(
  nprs_worst = single, nprs_average = single, nprs_now = single, nprs_mean = mean_if(3), psfs = mean_if(1),
  ndi = function(a) percent_of_possible(a, 8), odi21a = function(a) percent_of_possible(a, 8),
  rmdq24 = scaled_up(20, 1), quickdash = disability_arm(10), quickdash_work = disability_arm(4), dash30 = disability_arm(27),
  spadi = shoulder_index, prtee = elbow_evaluation, bctq_sss = mean_if(9), bctq_fss = mean_if(6), lefs = scaled_up(18, 4),
  mskhq = scaled_up(12, 4), ompsq_sf = risk_short_form, startback = back_screen, startmsk = any_region_screen,
  nmq = region_survey, was = single, groc15 = single, groc11 = single)

# --- the other figures ---------------------------------------------------------------------------------------------

trend <- function(x, y) {
  pairs <- combn(length(x), 2)
  slope <- median((y[pairs[2, ]] - y[pairs[1, ]]) / (x[pairs[2, ]] - x[pairs[1, ]]))
  tau <- suppressWarnings(cor(x, y, method = "kendall"))
  c(slope, median(y - slope * x), median(y) - slope * median(x), if (is.na(tau)) NULL else tau)
}

goals <- function(x, w) {
  known <- !is.na(x); x <- x[known]; w <- w[known]
  if (length(x) == 0) numeric(0) else 50 + 10 * sum(w * x) / sqrt(0.7 * sum(w^2) + 0.3 * sum(w)^2)
}

percent <- function(before, after) if (before == 0) numeric(0) else 100 * (before - after) / before

# pounds, mean and standard deviation; men right, men left, women right, women left
norms <- matrix(c(
  121.0, 20.6, 104.5, 21.8, 70.4, 14.5, 61.0, 13.1,  120.8, 23.0, 110.5, 16.2, 74.5, 13.9, 63.5, 12.2,
  121.8, 22.4, 110.4, 21.7, 78.7, 19.2, 68.0, 17.7,  119.7, 24.0, 112.9, 21.7, 74.1, 10.8, 66.3, 11.7,
  116.8, 20.7, 112.8, 18.7, 70.4, 13.5, 62.3, 13.8,  109.9, 23.0, 100.8, 22.8, 62.2, 15.1, 56.0, 12.7,
  113.6, 18.1, 101.9, 17.0, 65.8, 11.6, 57.3, 10.7,  101.1, 26.7, 83.2, 23.4, 57.3, 12.5, 47.3, 11.9,
  89.7, 20.4, 76.8, 20.3, 55.1, 10.1, 45.7, 10.1,    91.1, 20.6, 76.8, 19.8, 49.6, 9.7, 41.0, 8.2,
  75.3, 21.5, 64.8, 18.1, 49.6, 11.7, 41.5, 10.2,    65.7, 21.0, 55.0, 17.0, 42.6, 11.0, 37.6, 8.9), ncol = 8, byrow = TRUE)

grip <- function(kg, who) {
  if (all(is.na(kg))) return(numeric(0))
  strength <- mean(kg, na.rm = TRUE); age <- as.numeric(who[3])
  if (age < 20) return(strength)
  row <- min(12, floor((age - 20) / 5) + 1)
  column <- 1 + 4 * (who[1] == "women") + 2 * (who[2] == "left")
  pounds <- strength / 0.45359237
  c(strength, (pounds - norms[row, column]) / norms[row, column + 1], 100 * pounds / norms[row, column])
}

# --- reading, comparing, writing -----------------------------------------------------------------------------------

numbers <- function(text) suppressWarnings(as.numeric(strsplit(text, " ")[[1]]))
shown <- function(x) paste(ifelse(is.na(x), "", sprintf("%.15g", x)), collapse = " ")
fields <- function(r) if (!is.null(r$refused)) c(paste("refused", r$refused), "", "", "", "") else
  c(shown(r$value), shown(r$low), shown(r$high), shown(r$parts), paste(r$groups, collapse = ";"))

# the largest difference between two texts of numbers; Inf where they differ in anything but the digits of a number
apart <- function(theirs, ours) {
  if (theirs == ours) return(0)
  a <- strsplit(theirs, " ")[[1]]; b <- strsplit(ours, " ")[[1]]
  x <- suppressWarnings(as.numeric(a)); y <- suppressWarnings(as.numeric(b))
  if (length(a) != length(b) || any(is.na(x)) || any(is.na(y))) Inf else max(abs(x - y))
}

given <- read.csv(file.path(from, "scoring-answers.csv"), colClasses = "character")
columns <- c("value", "low", "high", "parts", "groups")
cat(R.version.string, "\n\nanswer sets of each instrument; largest difference in the unit of the score\n\n")
cat(sprintf("%-16s %6s %7s %8s %8s %9s %12s\n", "instrument", "sets", "scored", "bounds", "no score", "disagree", "largest"))
out <- NULL
failed <- 0
for (key in unique(given$instrument)) {
  rows <- given[given$instrument == key, ]
  made <- t(sapply(rows$answers, function(text) fields(rules[[key]](numbers(text)))))
  colnames(made) <- columns
  difference <- sapply(seq_len(nrow(rows)), function(i) max(sapply(columns, function(c) apart(made[i, c], rows[i, c]))))
  wrong <- sum(!(difference <= tolerance))
  failed <- failed + wrong
  cat(sprintf("%-16s %6d %7d %8d %8d %9d %12.2g\n", key, nrow(rows), sum(made[, "value"] != "" & !grepl("refused", made[, "value"])),
    sum(made[, "value"] == "" & (made[, "low"] != "" | made[, "parts"] != "")), sum(apply(made == "", 1, all) | grepl("refused", made[, "value"])),
    wrong, max(difference)))
  out <- rbind(out, data.frame(instrument = key, answers = rows$answers, made, row.names = NULL)[seq_len(kept), ])
}

others <- read.csv(file.path(from, "scoring-others.csv"), colClasses = "character")
others$made <- mapply(function(what, first, second) shown(switch(what, trend = trend(numbers(first), numbers(second)),
  goals = goals(numbers(first), numbers(second)), percent = percent(numbers(first), numbers(second)),
  grip = grip(numbers(first), strsplit(second, " ")[[1]]))), others$what, others$first, others$second)
others$apart <- mapply(apart, others$made, others$result)
cat("\nother figures (trend: slope, both intercepts, tau-b; goals: T; percent change; grip: mean, z, percent of norm)\n\n")
keptOthers <- NULL
for (what in unique(others$what)) {
  rows <- others[others$what == what, ]
  wrong <- sum(!(rows$apart <= tolerance))
  failed <- failed + wrong
  cat(sprintf("%-16s %6d %36d %12.2g\n", what, nrow(rows), wrong, max(rows$apart)))
  keptOthers <- rbind(keptOthers, head(rows, kept))
}
cat("\n", if (failed == 0) "All agree." else paste(failed, "disagree."), "\n", sep = "")

write <- function(name, source, data) {
  file <- file(file.path(to, name), "w")
  writeLines(paste("# Source:", source), file)
  write.csv(data, file, row.names = FALSE, quote = FALSE, na = "")
  close(file)
}
write("scoring-r.csv", paste("computed by scoring.R,", R.version.string), out)
write("scoring-others-r.csv", paste("computed by scoring.R,", R.version.string),
  data.frame(keptOthers[, c("what", "first", "second")], result = keptOthers$made))
quit(status = if (failed == 0) 0 else 1)
