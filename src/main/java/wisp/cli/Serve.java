package wisp.cli;

import io.javalin.util.JavalinBindException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wisp.records.Records;
import wisp.site.Site;
import wisp.site.SiteSettings;

/** Serves the pages and the HTTP interface until it is stopped. */
@Command(name = "serve", description = "Serve the pages and the HTTP interface.", mixinStandardHelpOptions = true)
final class Serve implements Callable<Integer> {
    private static final Logger LOGGER = LoggerFactory.getLogger(Serve.class);

    @Mixin
    private DataOption data;

    @Option(names = "--port", defaultValue = "7373", description = "Port. Default: ${DEFAULT-VALUE}")
    private int port;

    @Option(
            names = "--bind",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Address to listen on. Default: ${DEFAULT-VALUE}, this machine alone.")
    private String bind;

    @Option(
            names = "--name",
            paramLabel = "HOST",
            description = "Name that others call it by, as behind a proxy; may be given again for another.")
    private Set<String> names = Set.of();

    @Mixin
    private CalendarsOption calendars;

    @Option(names = "--demo", description = "Fill an empty data folder with the demo seasons first.")
    private boolean demo;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--port " + port + " is not a port: choose one from 0 (any that is free) to 65535.");
        }
        LogSettings.check(System.getenv());
        Records records = data.open();
        try {
            String held = demo && records.log().last() == 0 ? DemoSeasons.load(records) : held(records);
            records.cohort();
            Site site = start(records);
            CountDownLatch stopped = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                site.close();
                records.close();
                stopped.countDown();
            }));
            String address = "http://" + (bind.contains(":") ? "[" + bind + "]" : bind) + ":" + site.port() + "/";
            spec.commandLine().getOut().println("Wisp serves " + held + " at " + address + " — Ctrl-C stops it.");
            if (!local()) {
                LOGGER.warn("Anyone who reaches this address can read and record: keep it in a trusted network.");
            }
            site.rehearse();
            stopped.await();
            return 0;
        } catch (InterruptedException ended) {
            return 0;
        } catch (RuntimeException failed) {
            records.close();
            throw failed;
        }
    }

    private Site start(Records records) {
        try {
            return Site.start(records, new SiteSettings(bind, port, names, calendars.addresses(data)));
        } catch (JavalinBindException taken) {
            if (!ours()) {
                throw new Refusals(
                        bind + " is not an address of this machine: say --bind 127.0.0.1 for this machine alone,"
                                + " or one of its own addresses.");
            }
            throw new Refusals("Port " + port + " on " + bind
                    + " cannot be used, most likely because another program has it: choose another with --port.");
        }
    }

    private String held(Records records) {
        return records.log().last() + " events from " + data.where();
    }

    private boolean ours() {
        try {
            InetAddress address = InetAddress.getByName(bind);
            return address.isAnyLocalAddress()
                    || address.isLoopbackAddress()
                    || NetworkInterface.getByInetAddress(address) != null;
        } catch (UnknownHostException | SocketException unknown) {
            return false;
        }
    }

    private boolean local() {
        try {
            return InetAddress.getByName(bind).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }
}
