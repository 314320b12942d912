package wisp.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wisp.log.ChainHead;
import wisp.log.DayHead;
import wisp.log.EventLog;
import wisp.log.Verification;
import wisp.records.Records;

/** Walks the log's hash chain, and tells or checks its head. */
@Command(name = "verify", description = "Check that no recorded event was changed.", mixinStandardHelpOptions = true)
final class Verify implements Callable<Integer> {
    @Mixin
    private DataOption data;

    @Option(
            names = "--head",
            arity = "0..1",
            paramLabel = "SEQUENCE:HASH",
            fallbackValue = "",
            description =
                    "Print the head alone, to be noted outside; or check that the chain passes through a noted one.")
    private String head;

    @Option(names = "--days", description = "Print the head at the end of each day of recording.")
    private boolean days;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        ChainHead noted = head == null || head.isEmpty() ? null : noted();
        try (EventLog log = data.openLog()) {
            Verification found = log.verify();
            if (!found.whole()) {
                return refuse("Broken at sequence " + found.broken() + ": " + found.problem());
            }
            if (noted != null && noted.missedBy(log).isPresent()) {
                return refuse(noted.missedBy(log).get());
            }
            if (head != null && head.isEmpty()) {
                say(ChainHead.of(found).toString());
            } else {
                say("All " + found.events() + " events are as they were written. Head " + found.head() + "."
                        + (noted == null
                                ? ""
                                : " The chain passes through the head noted at " + noted.sequence() + "."));
            }
        }
        if (days) {
            sayDays();
        }
        return 0;
    }

    private void sayDays() {
        try (Records records = data.openExisting()) {
            for (DayHead day : records.dayHeads().days()) {
                say(day.day() + " " + day.head());
            }
        }
    }

    private ChainHead noted() {
        return ChainHead.read(head)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "\"" + head + "\" is not a head: write it as verify --head printed it, SEQUENCE:HASH."));
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }

    private int refuse(String sentence) {
        spec.commandLine().getErr().println(sentence);
        return Wisp.REFUSED;
    }
}
