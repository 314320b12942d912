# Does in R what SideBySide.java did on the same rows, and prints both times and the largest relative difference of the
# figures. Run by side-by-side.sh.
suppressPackageStartupMessages(library(survival))
folder <- commandArgs(trailingOnly = TRUE)[1]
n <- 1e6
rows <- file(file.path(folder, "rows.bin"), "rb")
column <- function() readBin(rows, "double", n, endian = "big")
days <- list(time = column(), cause = column(), stratum = column())
continuous <- list(time = column(), cause = column(), stratum = column())
x <- sapply(1:7, function(j) column())
y <- column()
close(rows)
wisp <- lapply(strsplit(readLines(file.path(folder, "wisp.tsv")), "\t"), function(l) list(work = l[1], seconds = as.numeric(l[2]), figures = as.numeric(l[-(1:2)])))
names(wisp) <- sapply(wisp, `[[`, "work")
compare <- function(work, task, repeats = 3) {
  best <- Inf
  for (i in seq_len(repeats)) best <- min(best, system.time(figures <- task(), gcFirst = TRUE)[["elapsed"]])
  ours <- wisp[[work]]
  apart <- max(abs(as.vector(figures) - ours$figures) / pmax(abs(ours$figures), 1e-300))
  cat(sprintf("%-38s %9.3f s %9.3f s %8.1f x %10.1e\n", work, ours$seconds, best, best / ours$seconds, apart))
}
cat(sprintf("%s, survival %s\n", R.version.string, packageVersion("survival")))
cat(sprintf("%-38s %11s %11s %10s %10s\n", "work on 1,000,000 rows (best time)", "Wisp", "R", "R / Wisp", "difference"))
km <- function(d) function() {
  s <- summary(survfit(Surv(time, cause == 1) ~ stratum, data = as.data.frame(d), conf.type = "log-log", timefix = FALSE), times = 90)
  rbind(s$surv, s$lower, s$upper)
}
compare("Kaplan-Meier, 20 strata, days", km(days))
compare("Kaplan-Meier, 20 strata, continuous", km(continuous))
compare("Aalen-Johansen, 2 causes, days", function() {
  s <- summary(survfit(Surv(time, factor(cause, 0:2)) ~ 1, data = as.data.frame(days), timefix = FALSE), times = 90)
  rbind(s$pstate[2:3], s$std.err[2:3])
}, 1)
compare("log-rank, 20 groups, days", function() survdiff(Surv(time, cause == 1) ~ stratum, data = as.data.frame(days))$chisq)
compare("logistic, 8 columns", function() { m <- glm.fit(cbind(1, x), y, family = binomial(), control = glm.control(epsilon = 1e-12)); class(m) <- c("glm", "lm"); c(coef(m), sqrt(diag(chol2inv(m$qr$qr[1:8, 1:8])))) }, 2)
