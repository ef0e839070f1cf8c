package limbway.reports.command;

import java.util.Optional;

import picocli.CommandLine.IVersionProvider;

/** Which version of the program runs. */
final class Version implements IVersionProvider {

    /** The version in the manifest of the jar; run from classes there is none. */
    static String current() {
        return Optional.ofNullable(Limbway.class.getPackage().getImplementationVersion())
                .orElse("unpackaged");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"limbway " + current()};
    }
}
