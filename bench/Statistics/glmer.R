# Times R's glmer on the trials that the program wrote: Rscript bench/Statistics/glmer.R FOLDER class|district 0|1
suppressPackageStartupMessages(library(lme4))
args <- commandArgs(trailingOnly = TRUE)
trials <- read.csv(file.path(args[1], paste0(args[2], ".csv")))
seconds <- system.time(fit <- glmer(success ~ 0 + factor(level) + (1 | pupil), trials, binomial, nAGQ = as.integer(args[3])))
cat(sprintf("%-10s nAGQ=%s %9.0f ms, %9.0f ms of processor  sd %.4f\n", args[2], args[3], 1000 * seconds["elapsed"], 1000 * sum(seconds[c("user.self", "sys.self")]), sqrt(unlist(VarCorr(fit)))))
