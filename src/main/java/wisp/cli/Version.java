package wisp.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, as its jar says. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"wisp " + (version == null ? "(not packaged)" : version)};
    }
}
