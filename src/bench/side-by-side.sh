#!/bin/sh
# Runs the same statistics on the same million invented rows here and in R, and prints both best times and their ratio.
# R is optional and used for nothing else: Debian's r-base-core and r-cran-survival are enough.
set -eu
cd "$(dirname "$0")/../.."
if ! command -v Rscript >/dev/null; then
    echo "Rscript was not found. Install R with survival (Debian: apt-get install r-base-core r-cran-survival)." >&2
    exit 1
fi
mvn -q test-compile
mvn -q exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
    -Dexec.args="-Xmx4g -cp %classpath wisp.statistics.SideBySide target/side-by-side"
Rscript src/bench/side-by-side.R target/side-by-side
rm -f target/side-by-side/rows.bin
