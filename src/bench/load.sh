#!/bin/sh
# Puts a real server under load and prints what came of it.
#   src/bench/load.sh load [SECONDS] [burst]   50 phones post and 50 people read, 5,000 calves
#   src/bench/load.sh memory [SECONDS]         a day's work over and over under -Xmx256m; heap after GC by time
set -eu
cd "$(dirname "$0")/../.."
mvn -q test-compile
mvn -q exec:exec -Dexec.classpathScope=test -Dexec.executable=java \
    -Dexec.args="-cp %classpath wisp.load.Load $*"
