# Times R's glmer on the trials that the program wrote: Rscript bench/Statistics/glmer.R FOLDER
suppressPackageStartupMessages(library(lme4))
folder <- commandArgs(trailingOnly = TRUE)[1]
for (name in c("class", "district")) {
  trials <- read.csv(file.path(folder, paste0(name, ".csv")))
  for (nodes in c(0, 1)) {
    seconds <- system.time(fit <- glmer(success ~ 0 + factor(level) + (1 | pupil), trials, binomial, nAGQ = nodes))["elapsed"]
    cat(sprintf("%-10s nAGQ=%d %8.0f ms  sd %.4f\n", name, nodes, 1000 * seconds, sqrt(unlist(VarCorr(fit)))))
  }
}
